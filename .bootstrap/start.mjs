// The server runs in this very process, so that a signal sent to it arrives.
import { build } from "./build.mjs";

build();
await import("../apps/api/dist/server.js");
