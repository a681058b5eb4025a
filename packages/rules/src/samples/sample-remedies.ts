/** A conductor too large for its terminal, and parts that may help it. Not part of the library. */
import type { CatalogueItem, Connector, Opening } from "../core/connector.js";
import type { Equipment, Joint } from "../core/joint.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "./sample-joint.js";

const FORMS = ["class-B", "class-C", "compact"] as const;
export const takes = (from: string, to: string, more: Partial<Opening> = {}): Opening[] => [
  sampleOpening({ ranges: [{ from, to, strandings: FORMS }], ...more }),
];

/** A terminal of the equipment for 6 AWG to 4/0 AWG. */
export const terminal = (change: Partial<Connector> = {}): Connector =>
  sampleConnector({ family: "equipment-terminal", openings: takes("6 AWG", "4/0 AWG"), ...change });
export const equipment = (change: Partial<Equipment> = {}): Equipment => ({
  tag: "P-1",
  kind: "panelboard",
  terminalTemperature: { value: 75, unit: "Cel" },
  terminal: terminal(),
  ...change,
});
/** 250 kcmil aluminum, 180 A under a 200 A device: one size above what the terminal takes. */
export const tooLarge = (change: Partial<Joint> = {}): Joint =>
  sampleJoint({
    conductors: [sampleConductor({ metal: "aluminum", size: "250 kcmil", insulation: "XHHW-2" })],
    circuit: { voltageV: 480, loadA: 180, sets: 1, protection: { kind: "device", ratingA: 200 } },
    equipment: equipment(),
    ...change,
  });
export const part = (partNumber: string, change: Partial<CatalogueItem>): CatalogueItem => ({
  ...sampleConnector(),
  partNumber,
  description: partNumber.toLowerCase(),
  status: "invented",
  packQuantity: 1,
  ...change,
});
export const KIT: CatalogueItem = part("KIT-400", {
  family: "lug-kit",
  mounting: { kind: "frame", frames: ["Frame 400"] },
  openings: takes("4/0 AWG", "500 kcmil"),
  price: { amount: "30.10", currency: "USD" },
  labourHours: 0.6,
});
export const PIN: CatalogueItem = part("PIN", {
  family: "pin-adapter",
  construction: "compression",
  mounting: { kind: "free" },
  screws: [],
  openings: [sampleOpening({ ranges: [{ from: "250 kcmil", to: "250 kcmil", strandings: FORMS }] })].map(
    ({ screw: _, ...opening }) => opening,
  ),
  pin: { size: "3/0 AWG", metal: "copper" },
  tooling: { tool: "press", die: "D-1" },
  compound: "pre-filled",
  price: { amount: "12.95", currency: "USD" },
  labourHours: 0.5,
});
export const REDUCER: CatalogueItem = part("REDUCER", {
  family: "splicer-reducer",
  functions: ["splice"],
  mounting: { kind: "free" },
  insulated: true,
  places: ["dry"],
  compound: "pre-filled",
  screws: [
    { id: "large", drive: { kind: "socket", acrossFlats: "5/16" }, torque: { value: 275, unit: "lbf-in" } },
    { id: "small", drive: { kind: "socket", acrossFlats: "5/16" }, torque: { value: 275, unit: "lbf-in" } },
  ],
  openings: [
    ...takes("4/0 AWG", "350 kcmil", { id: "large", screw: "large" }),
    ...takes("2 AWG", "4/0 AWG", { id: "small", screw: "small" }),
  ],
  price: { amount: "21.05", currency: "USD" },
  labourHours: 0.7,
});
