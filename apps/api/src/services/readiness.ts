import { Problem } from "../problems/problem.js";
import type { CatalogueService } from "./catalogue.js";

/**
 * Whether the service can answer: its store can be read and a catalogue is loaded.
 * @throws Problem NOT_READY otherwise.
 */
export async function assertReady(ping: () => Promise<void>, catalogue: CatalogueService): Promise<void> {
  try {
    await ping();
    await catalogue.current();
  } catch {
    throw new Problem("NOT_READY", "The store cannot be read or holds no catalogue.");
  }
}
