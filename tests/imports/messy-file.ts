/** A supplier's list as they come: ten thousand rows with every slip that is met, made from a seed. */

/** How many rows of each kind the file has, beside plain good ones. Every count is chosen by hand. */
const ROWS_OF_KIND = {
  "size in MCM": 300,
  "size with #": 200,
  "size without unit": 150,
  "size in bare figures": 50,
  "size that is not made": 25,
  "torque in in-lb": 400,
  "torque in ft-lb": 100,
  "torque in N·m": 100,
  "torque without unit": 120,
  "torque in no unit": 30,
  "strip length as a fraction": 200,
  "strip length with a comma": 40,
  "strip length in mm": 70,
  "temperature with a degree sign": 80,
  "temperature in F": 60,
  "temperature without unit": 70,
  "said twice, the same": 100,
  "said twice, otherwise": 120,
  "cells missing": 90,
  "cells too many": 25,
  "family empty": 55,
  "family unknown": 45,
  "family in other letters": 150,
  "line break in the description": 130,
  "semicolon in the description": 140,
  "doubled quotation marks": 60,
  "stray quotation mark": 35,
  "text like a formula": 110,
  "text marked with an apostrophe": 20,
  "range upside down": 50,
  "range of two systems": 30,
  "superseded by the next": 80,
  "superseded by itself": 10,
  "superseded in a circle": 12,
  "day in another order": 40,
  "day that is none": 15,
  "pack of none": 20,
  "pack of a part": 20,
} as const;

export type RowKind = keyof typeof ROWS_OF_KIND | "plain";

/** The column in which a row of the kind is refused; null where the row as a whole is. Kinds not named are good. */
export const REFUSED_IN: Readonly<Partial<Record<RowKind, string | null>>> = {
  "size without unit": "Max wire",
  "size in bare figures": "Max wire",
  "size that is not made": "Max wire",
  "torque without unit": "Torque",
  "torque in no unit": "Torque",
  "strip length with a comma": "Strip",
  "temperature without unit": "Temp",
  "said twice, the same": "Item no.",
  "said twice, otherwise": "Item no.",
  "cells missing": null,
  "cells too many": null,
  "family empty": "Type",
  "family unknown": "Type",
  "stray quotation mark": null,
  "range upside down": "Min wire",
  "range of two systems": "Max wire",
  "superseded by itself": "Replaced by",
  "superseded in a circle": "Replaced by",
  "day in another order": "From",
  "day that is none": "From",
  "pack of none": "Pack",
  "pack of a part": "Pack",
};

/** Kinds that are good once what was recognised in them is confirmed, and the column in which it is. */
export const RECOGNISED_IN: Readonly<Partial<Record<RowKind, string>>> = {
  "size in MCM": "Max wire",
  "size with #": "Min wire",
  "torque in in-lb": "Torque",
  "torque in ft-lb": "Torque",
  "torque in N·m": "Torque",
  "strip length as a fraction": "Strip",
  "temperature with a degree sign": "Temp",
  "family in other letters": "Type",
  "line break in the description": "Text",
};

/** Which of the supplier's columns means what; what every row has in common is said once. */
export const MESSY_MAPPING = {
  name: "invented supplier, weekly list",
  columns: [
    { header: "Item no.", field: "partNumber" },
    { header: "Text", field: "description" },
    { header: "Type", field: "family" },
    { header: "Pack", field: "packQuantity" },
    { header: "Min wire", field: "from" },
    { header: "Max wire", field: "to" },
    { header: "Strip", field: "stripLength" },
    { header: "Temp", field: "temperature" },
    { header: "Torque", field: "torque" },
    { header: "Replaced by", field: "supersededBy" },
    { header: "From", field: "validFrom" },
  ],
  constants: {
    construction: "set-screw",
    functions: "termination",
    insulated: "no",
    openingsApart: "yes",
    openingCount: "1",
    strandings: "class-B, class-C",
    drive: "external-hex",
    fixing: "integral",
    reusable: "yes",
    metalMarking: "AL9CU",
  },
  ignore: ["Price"],
  delimiter: ";",
} as const;

const HEADER = [...MESSY_MAPPING.columns.map(({ header }) => header), "Price"];
const BLANK_LINES = 37;

/** A row as it was written, and what must come of it. */
export interface MessyRow {
  readonly kind: RowKind;
  /** The line on which it begins. */
  readonly line: number;
  readonly partNumber: string;
  readonly description: string;
}

export interface MessyFile {
  readonly bytes: Buffer;
  readonly rows: readonly MessyRow[];
  readonly blankLines: number;
}

interface Cells {
  partNumber: string;
  text: string;
  family: string;
  pack: string;
  from: string;
  to: string;
  strip: string;
  temp: string;
  torque: string;
  successor: string;
  validFrom: string;
}

/**
 * The file: UTF-8 with a byte order mark, semicolons, CR LF.
 * @param rows how many rows it has; at least as many as there are rows with slips.
 */
export function messyFile(seed: number, rows = 10_000): MessyFile {
  const random = seeded(seed);
  const kinds: RowKind[] = Object.entries(ROWS_OF_KIND).flatMap(([kind, count]) =>
    Array.from({ length: count }, () => kind as RowKind),
  );
  if (rows < kinds.length) throw new RangeError(`at least ${String(kinds.length)} rows`);
  while (kinds.length < rows) kinds.push("plain");
  shuffle(kinds, random);

  const places = new Map<RowKind, number[]>();
  kinds.forEach((kind, index) => {
    places.set(kind, [...(places.get(kind) ?? []), index]);
  });
  const written = kinds.map((kind, index) => cellsOf(kind, index));
  repeatPairs(places, written);
  closeCircles(places.get("superseded in a circle") ?? [], written);
  // The first of two equal rows is good, so each such row repeats a plain one that stands above it.
  repeatPlain(kinds, written);

  const blankBefore = new Set<number>();
  while (blankBefore.size < BLANK_LINES) blankBefore.add(Math.floor(random() * rows));
  const texts = [HEADER.join(";")];
  const made: MessyRow[] = [];
  let line = 2;
  written.forEach((cells, index) => {
    if (blankBefore.has(index)) {
      texts.push("");
      line += 1;
    }
    const kind = kinds[index] ?? "plain";
    const text = rowText(kind, cells);
    texts.push(text);
    made.push({ kind, line, partNumber: cells.partNumber, description: cells.text });
    line += text.split("\n").length;
  });
  const bytes = Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), Buffer.from(texts.join("\r\n"), "utf8")]);
  return { bytes, rows: made, blankLines: BLANK_LINES };
}

function cellsOf(kind: RowKind, index: number): Cells {
  const number = String(index + 1).padStart(5, "0");
  const cells: Cells = {
    partNumber: `LKW-${number}`,
    text: `set-screw lug ${number}`,
    family: "set-screw-lug-one-hole",
    pack: String(1 + (index % 50)),
    from: "14 AWG",
    to: "4/0 AWG",
    strip: "0.75 in",
    temp: "90 C",
    torque: "120 lbf-in",
    successor: "",
    validFrom: "2026-03-01",
  };
  return { ...cells, ...SLIPS[kind]?.(number, index) };
}

const SLIPS: Readonly<Partial<Record<RowKind, (number: string, index: number) => Partial<Cells>>>> = {
  "size in MCM": () => ({ to: "250 MCM" }),
  "size with #": () => ({ from: "#12" }),
  "size without unit": () => ({ to: "4/0" }),
  "size in bare figures": () => ({ to: "250" }),
  "size that is not made": () => ({ to: "7 AWG" }),
  "torque in in-lb": () => ({ torque: "275 in-lb" }),
  "torque in ft-lb": () => ({ torque: "23 ft-lb" }),
  "torque in N·m": () => ({ torque: "31 N·m" }),
  "torque without unit": () => ({ torque: "275" }),
  "torque in no unit": () => ({ torque: "275 twists" }),
  "strip length as a fraction": () => ({ strip: "1-1/4 in" }),
  "strip length with a comma": () => ({ strip: "12,5 mm" }),
  "strip length in mm": () => ({ strip: "19 mm" }),
  "temperature with a degree sign": () => ({ temp: "75 °C" }),
  "temperature in F": () => ({ temp: "167 F" }),
  "temperature without unit": () => ({ temp: "75" }),
  "family empty": () => ({ family: "" }),
  "family unknown": () => ({ family: "lug of some kind" }),
  "family in other letters": () => ({ family: "Set Screw Lug One Hole" }),
  "line break in the description": (number) => ({ text: `set-screw lug ${number},\nwith a second line` }),
  "semicolon in the description": (number) => ({ text: `set-screw lug ${number}; tin plated` }),
  "doubled quotation marks": (number) => ({ text: `lug ${number} for a 1/2" stud` }),
  "stray quotation mark": (number) => ({ text: `lug ${number} for a 1/2" stud` }),
  "text like a formula": (number, index) => ({ text: `${"=+-@"[index % 4] ?? "="}SUM(A1:A${number})` }),
  "text marked with an apostrophe": (number) => ({ text: `'=A${number}` }),
  "range upside down": () => ({ from: "250 kcmil" }),
  "range of two systems": () => ({ to: "35 mm2" }),
  "superseded by the next": () => ({ successor: "LKW-NEXT" }),
  "superseded by itself": (number) => ({ successor: `LKW-${number}` }),
  "day in another order": () => ({ validFrom: "3/31/2026" }),
  "day that is none": () => ({ validFrom: "2026-02-30" }),
  "pack of none": () => ({ pack: "0" }),
  "pack of a part": () => ({ pack: "6.5" }),
};

/** Rows of "said twice, otherwise" come in pairs of one number and two torques. */
function repeatPairs(places: ReadonlyMap<RowKind, readonly number[]>, written: Cells[]): void {
  const pairs = places.get("said twice, otherwise") ?? [];
  for (let at = 0; at + 1 < pairs.length; at += 2) {
    const first = written[pairs[at] ?? -1];
    const second = written[pairs[at + 1] ?? -1];
    if (first === undefined || second === undefined) continue;
    second.partNumber = first.partNumber;
    second.torque = "150 lbf-in";
  }
}

/** Circles of three. */
function closeCircles(rows: readonly number[], written: Cells[]): void {
  for (let at = 0; at + 2 < rows.length; at += 3)
    for (let step = 0; step < 3; step += 1) {
      const one = written[rows[at + step] ?? -1];
      const next = written[rows[at + ((step + 1) % 3)] ?? -1];
      if (one !== undefined && next !== undefined) one.successor = next.partNumber;
    }
}

function repeatPlain(kinds: RowKind[], written: Cells[]): void {
  const plain: number[] = [];
  let used = 0;
  kinds.forEach((kind, index) => {
    if (kind === "plain") plain.push(index);
    if (kind !== "said twice, the same") return;
    const original = written[plain[used] ?? -1];
    used += 1;
    if (original === undefined) throw new RangeError("no plain row above to repeat; take another seed");
    written[index] = { ...original };
  });
}

function rowText(kind: RowKind, cells: Cells): string {
  const values = [
    cells.partNumber,
    cells.text,
    cells.family,
    cells.pack,
    cells.from,
    cells.to,
    cells.strip,
    cells.temp,
    cells.torque,
    cells.successor,
    cells.validFrom,
    "1.25",
  ];
  if (kind === "cells missing") return values.slice(0, 7).join(";");
  if (kind === "cells too many") return [...values, "what is this"].join(";");
  if (kind === "stray quotation mark") return values.join(";");
  return values.map((value) => (/[;"\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value)).join(";");
}

/** A small generator of numbers from 0 up to 1 that gives the same ones for the same seed. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

function shuffle(list: RowKind[], random: () => number): void {
  for (let last = list.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const kept = list[last] ?? "plain";
    list[last] = list[other] ?? "plain";
    list[other] = kept;
  }
}
