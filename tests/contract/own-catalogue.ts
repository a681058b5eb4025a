import type { Service } from "./open-service.js";
import { workshopLug } from "./workshop-job.js";

/** The lug of the workshop as a catalogue of the user's own holds it. */
export function workshopPart(change: Record<string, unknown> = {}): Record<string, unknown> {
  return { ...workshopLug(), partNumber: "LKW-1", status: "supplied", packQuantity: 6, ...change };
}

/** Makes a catalogue with these connectors as its version 1, or without any version; its id. */
export async function ownCatalogue(app: Service, items: readonly Record<string, unknown>[]): Promise<string> {
  const made = await app.inject({ method: "POST", url: "/v1/catalogues", payload: { name: "Larkfen Works" } });
  const { id } = made.json<{ id: string }>();
  if (items.length === 0) return id;
  const version = await app.inject({ method: "POST", url: `/v1/catalogues/${id}/versions`, payload: { items } });
  if (version.statusCode !== 201) throw new Error(version.body);
  return id;
}
