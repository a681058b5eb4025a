/** How the text in a column's cells is read. */
export type ColumnKind =
  | "text"
  | "label"
  | "word"
  | "words"
  | "texts"
  | "yes-no"
  | "whole-number"
  | "day"
  | "size"
  | "torque"
  | "length"
  | "temperature"
  | "voltage"
  | "suppliers"
  | "drive"
  | "json";

/** One column of a catalogue file. */
export interface Column {
  /** Our own column name, as the first row of an exported file has it. */
  readonly header: string;
  readonly kind: ColumnKind;
  /** True: no connector can do without it. Openings may be given in full instead of in their plain columns. */
  readonly needed?: true;
  /** Header words by which the column is suggested, in lower case without punctuation; never applied unasked. */
  readonly alsoCalled?: readonly string[];
}

/** Every column, in the order in which an exported file has them. */
export const COLUMNS = {
  partNumber: {
    header: "part number",
    kind: "label",
    needed: true,
    alsoCalled: ["part no", "part nr", "part", "item", "item no", "item number", "article", "article number"],
  },
  status: { header: "status", kind: "word" },
  description: {
    header: "description",
    kind: "text",
    needed: true,
    alsoCalled: ["item description", "text", "designation", "product description"],
  },
  family: { header: "family", kind: "word", needed: true, alsoCalled: ["type", "kind", "product family", "category"] },
  construction: { header: "construction", kind: "word", needed: true, alsoCalled: ["holding means", "method"] },
  functions: { header: "joint functions", kind: "words", needed: true, alsoCalled: ["functions", "use", "used for"] },
  suppliers: { header: "suppliers", kind: "suppliers", alsoCalled: ["supplier", "vendor", "vendors", "distributor"] },
  validFrom: { header: "in force from", kind: "day", alsoCalled: ["valid from", "effective", "effective from"] },
  validTo: { header: "in force to", kind: "day", alsoCalled: ["valid to", "valid until", "effective to"] },
  supersededBy: {
    header: "superseded by",
    kind: "label",
    alsoCalled: ["successor", "replaced by", "replacement", "new part number"],
  },
  packQuantity: {
    header: "pack quantity",
    kind: "whole-number",
    needed: true,
    alsoCalled: ["pack", "pack qty", "pack size", "box qty", "package quantity", "std pack", "standard pack"],
  },
  metalMarking: {
    header: "metal marking",
    kind: "label",
    alsoCalled: ["metal mark", "marking", "al cu mark", "conductor marking"],
  },
  temperature: {
    header: "temperature rating",
    kind: "temperature",
    alsoCalled: ["temperature", "temp", "temp rating", "max temp"],
  },
  voltageV: { header: "voltage rating", kind: "voltage", alsoCalled: ["voltage", "volts", "max voltage"] },
  insulated: { header: "insulated body", kind: "yes-no", needed: true, alsoCalled: ["insulated"] },
  openingsApart: {
    header: "openings keep metals apart",
    kind: "yes-no",
    needed: true,
    alsoCalled: ["separate openings", "openings apart", "separate barrels"],
  },
  coverPart: { header: "cover part", kind: "label", alsoCalled: ["cover", "insulating cover"] },
  listings: { header: "listed to", kind: "texts", alsoCalled: ["listing", "listings", "standard", "standards"] },
  places: { header: "listed places", kind: "words", alsoCalled: ["places", "location", "environment", "rated for"] },
  lineSide: { header: "line side", kind: "word", alsoCalled: ["line side mark", "line side marking"] },
  groundingListed: { header: "listed for grounding", kind: "yes-no", alsoCalled: ["grounding", "grounding listed"] },
  electrodes: { header: "electrodes", kind: "words", alsoCalled: ["electrode", "for electrode"] },
  conductorsPerClamp: { header: "conductors per clamp", kind: "whole-number" },
  opening: { header: "opening", kind: "label", alsoCalled: ["opening name", "port name"] },
  openingCount: {
    header: "openings",
    kind: "whole-number",
    needed: true,
    alsoCalled: ["ports", "number of openings", "number of ports", "barrels", "wire holes"],
  },
  openingDuty: { header: "opening duty", kind: "word" },
  from: {
    header: "smallest size",
    kind: "size",
    needed: true,
    alsoCalled: ["min wire", "min size", "minimum wire", "smallest wire", "wire min", "conductor min", "size min"],
  },
  to: {
    header: "largest size",
    kind: "size",
    needed: true,
    alsoCalled: ["max wire", "max size", "maximum wire", "largest wire", "wire max", "conductor max", "size max"],
  },
  strandings: {
    header: "strand forms",
    kind: "words",
    needed: true,
    alsoCalled: ["stranding", "strandings", "strands", "strand class", "conductor form"],
  },
  conductorsMax: {
    header: "conductors per opening",
    kind: "whole-number",
    alsoCalled: ["wires per opening", "wires per hole", "conductors per port", "wires per port"],
  },
  stripLength: { header: "strip length", kind: "length", alsoCalled: ["strip", "wire strip", "strip back"] },
  secondOpening: { header: "second opening", kind: "label" },
  secondOpeningCount: { header: "second openings", kind: "whole-number" },
  secondOpeningDuty: { header: "second opening duty", kind: "word" },
  secondFrom: { header: "second smallest size", kind: "size", alsoCalled: ["tap min", "min tap", "tap smallest"] },
  secondTo: { header: "second largest size", kind: "size", alsoCalled: ["tap max", "max tap", "tap largest"] },
  secondStrandings: { header: "second strand forms", kind: "words" },
  secondConductorsMax: { header: "second conductors per opening", kind: "whole-number" },
  secondStripLength: { header: "second strip length", kind: "length" },
  screw: { header: "screw", kind: "label", alsoCalled: ["screw name"] },
  drive: { header: "screw drive", kind: "drive", alsoCalled: ["drive", "screw head", "driver"] },
  torque: {
    header: "torque",
    kind: "torque",
    alsoCalled: ["tightening torque", "screw torque", "wire torque", "torque value"],
  },
  fixing: { header: "fixing", kind: "word", needed: true, alsoCalled: ["mounting", "mounting type", "fixed by"] },
  holes: { header: "holes", kind: "whole-number", alsoCalled: ["number of holes", "mounting holes", "bolt holes"] },
  bolt: { header: "hole for bolt", kind: "label", alsoCalled: ["bolt", "bolt size", "stud", "stud size", "hole size"] },
  spacing: { header: "hole spacing", kind: "length", alsoCalled: ["spacing", "hole centers", "hole centres"] },
  frames: { header: "equipment frames", kind: "texts", alsoCalled: ["frames", "frame", "fits"] },
  pinSize: { header: "pin size", kind: "size" },
  pinMetal: { header: "pin metal", kind: "word" },
  reusable: { header: "reusable", kind: "yes-no", needed: true, alsoCalled: ["can be reused", "re usable"] },
  bodyMetal: { header: "body metal", kind: "text", alsoCalled: ["body", "material", "body material"] },
  plating: { header: "plating", kind: "text", alsoCalled: ["finish", "plated"] },
  withstands: { header: "withstands", kind: "texts" },
  compound: { header: "compound", kind: "word", alsoCalled: ["joint compound", "inhibitor"] },
  tool: { header: "tool", kind: "text", alsoCalled: ["press", "crimp tool"] },
  die: { header: "die", kind: "text", alsoCalled: ["crimp die"] },
  crimps: { header: "crimps", kind: "whole-number", alsoCalled: ["number of crimps"] },
  openingsInFull: { header: "openings in full", kind: "json" },
  screwsInFull: { header: "screws in full", kind: "json" },
} as const satisfies Readonly<Record<string, Column>>;

export type Field = keyof typeof COLUMNS;
export const FIELDS = Object.keys(COLUMNS) as readonly Field[];

/** A column by its field, in the general form. */
export function columnOf(field: Field): Column {
  return COLUMNS[field];
}

/** Units that a mapping may state for the bare numbers of a column, by the column's kind. */
export const COLUMN_UNITS = {
  size: ["AWG", "kcmil", "AWG or kcmil", "mm2"],
  torque: ["lbf-in", "lbf-ft", "N-m"],
  length: ["in", "ft", "mm", "m"],
  temperature: ["Cel", "degF"],
  voltage: ["V", "kV"],
} as const;

export type ColumnUnit = (typeof COLUMN_UNITS)[keyof typeof COLUMN_UNITS][number];
export const ALL_COLUMN_UNITS: readonly ColumnUnit[] = Object.values(COLUMN_UNITS).flat();

/** The units that may be stated for a field; none where its cells hold no quantity. */
export function unitsOf(field: Field): readonly ColumnUnit[] {
  const { kind } = columnOf(field);
  return Object.hasOwn(COLUMN_UNITS, kind) ? COLUMN_UNITS[kind as keyof typeof COLUMN_UNITS] : [];
}
