/** What the place of a joint is like, as listings tell places apart. */
export const LOCATIONS = ["dry", "damp", "wet", "direct-burial", "concrete"] as const;
export type Location = (typeof LOCATIONS)[number];
