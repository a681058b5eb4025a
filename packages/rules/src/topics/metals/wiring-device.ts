import type { JointSubject } from "../../core/rule.js";

/** Is the connector the terminal of a switch or a receptacle? */
export function isWiringDevice({ joint, connector, origin }: JointSubject): boolean {
  return (
    connector.family === "wiring-device-terminal" ||
    (origin === "joint/equipment/terminal" && joint.equipment?.kind === "wiring-device")
  );
}
