/**
 * A question asked standing on site, with the answer a good electrician gives, and how the library is asked it.
 * "published": the deciding rule or figure stands in a publication; "hand": it follows by the working given.
 */
export interface SiteQuestion {
  readonly question: string;
  readonly answer: string;
  readonly kind: "published" | "hand";
  /** Publication and place, or the working. From memory where it does not say otherwise. */
  readonly source: string;
  /** Asks the library; what it returns is compared with `expected` as a subset. */
  readonly asked: () => unknown;
  readonly expected: unknown;
}
