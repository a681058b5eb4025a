/** A place in a published document: enough for a person with the book to open it. */
export interface Citation {
  /** "NFPA 70", "UL 486A-486B", "NEMA CC 1", "common practice". */
  readonly standard: string;
  /** "2023"; empty only for common practice, which has no published source. */
  readonly edition: string;
  /** "110.14(C)(1)(a)", "Table 310.16". */
  readonly locator: string;
}

/** "110.14(C)(1)(a), NFPA 70-2023", as it is shown to a reader. */
export function citationText(cite: Citation): string {
  const document = cite.edition === "" ? cite.standard : `${cite.standard}-${cite.edition}`;
  return cite.locator === "" ? document : `${cite.locator}, ${document}`;
}

/** A habit of the trade for which there is no published source; it may be shown but never decides alone. */
export const COMMON_PRACTICE: Citation = { standard: "common practice, no published source", edition: "", locator: "" };
