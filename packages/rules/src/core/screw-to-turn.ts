import type { Connector } from "./connector.js";

/** Whether a tool turns a screw of the connector: not one turned by hand, nor one that is there without being turned. */
export function hasScrewToTurn({ screws }: Connector): boolean {
  return screws.some(({ drive }) => drive.kind !== "none" && drive.kind !== "hand");
}
