import { type ColumnUnit, columnOf, FIELDS, type Field, unitsOf } from "./column.js";

/** What a header may mean. Only a person who confirms it makes it so. */
export interface SuggestedColumn {
  readonly header: string;
  readonly field: Field;
  /** A unit that the header itself names: "Torque (in-lb)". */
  readonly unit?: ColumnUnit;
  readonly because: string;
}

/** A mapping to start from, and the headers for which there is no suggestion. */
export interface MappingSuggestion {
  readonly columns: readonly SuggestedColumn[];
  readonly unknown: readonly string[];
}

/** Units as headers name them, in lower case without blanks, dots and hyphens. */
const UNITS_IN_HEADERS: Readonly<Record<string, ColumnUnit>> = {
  inlb: "lbf-in",
  inlbs: "lbf-in",
  lbin: "lbf-in",
  lbfin: "lbf-in",
  ftlb: "lbf-ft",
  ftlbs: "lbf-ft",
  lbft: "lbf-ft",
  lbfft: "lbf-ft",
  nm: "N-m",
  in: "in",
  inch: "in",
  inches: "in",
  ft: "ft",
  mm: "mm",
  c: "Cel",
  "°c": "Cel",
  f: "degF",
  "°f": "degF",
  v: "V",
  volts: "V",
  kv: "kV",
  awg: "AWG",
  kcmil: "kcmil",
  mcm: "kcmil",
  "awg/kcmil": "AWG or kcmil",
  "awg/mcm": "AWG or kcmil",
  awgorkcmil: "AWG or kcmil",
  mm2: "mm2",
  "mm²": "mm2",
};

const IN_BRACKETS = /[([]([^)\]]*)[)\]]/;

/** Suggests what headers mean from words that are usual for them; each of our columns at most once. */
export function suggestMapping(headers: readonly string[]): MappingSuggestion {
  const columns: SuggestedColumn[] = [];
  const unknown: string[] = [];
  const taken = new Set<Field>();
  for (const header of headers) {
    const suggestion = suggestionFor(header);
    if (suggestion === undefined || taken.has(suggestion.field)) {
      if (header.trim() !== "") unknown.push(header);
      continue;
    }
    taken.add(suggestion.field);
    columns.push(suggestion);
  }
  return { columns, unknown };
}

function suggestionFor(header: string): SuggestedColumn | undefined {
  const words = plainWords(header.replace(IN_BRACKETS, " "));
  const field = FIELDS.find((one) => {
    const { header: own, alsoCalled = [] } = columnOf(one);
    return plainWords(own) === words || alsoCalled.includes(words);
  });
  if (field === undefined) return undefined;
  const own = plainWords(columnOf(field).header) === words;
  const named = IN_BRACKETS.exec(header)?.[1]
    ?.toLowerCase()
    .replace(/[\s.·\-*]/g, "");
  const unit = named === undefined ? undefined : UNITS_IN_HEADERS[named];
  return {
    header,
    field,
    ...(unit === undefined || !unitsOf(field).includes(unit) ? {} : { unit }),
    because: own ? "it is our own name of the column" : `"${words}" is a usual name for the ${columnOf(field).header}`,
  };
}

function plainWords(header: string): string {
  return header
    .toLowerCase()
    .replace(/#/g, " number ")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
