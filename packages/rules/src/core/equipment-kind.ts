/** What a joint is made at. */
export const EQUIPMENT_KINDS = [
  "panelboard",
  "switchboard",
  "motor-control-center",
  "transfer-switch",
  "disconnect",
  "generator",
  "transformer",
  "motor",
  "battery",
  "wireway",
  "box",
  "handhole",
  "trench",
  "pedestal",
  "ground-bus",
  "electrode",
  "wiring-device",
  "other",
] as const;
export type EquipmentKind = (typeof EQUIPMENT_KINDS)[number];
