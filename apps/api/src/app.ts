import fastify, { type FastifyInstance } from "fastify";

/** Builds the service; tests and production build the same one. */
export function buildApp(): FastifyInstance {
  return fastify();
}
