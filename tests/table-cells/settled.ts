/** Cells in which the two entries differed, as data/published/DIFFERENCES.md settled them. */
export const SETTLED: ReadonlyMap<string, { readonly entered: string; readonly second: string; readonly why: string }> =
  new Map([
    [
      "NETA ATS-2021/bolt-torque-neta|3/4|stainlessUncoated",
      {
        entered: "",
        second: "60",
        why: "70 by the pattern of the rows, 60 by the second entry: not enough for a torque, so the cell is blank and refuses",
      },
    ],
  ]);

/** Cells that the second entry does not hold, by table and edition, and what stands for it. */
export const WITHOUT_SECOND_ENTRY: Readonly<Record<string, { readonly cells: number; readonly instead: string }>> = {
  "bunched-strands": { cells: 5, instead: "wires by their gauge (ASTM B258), in strand-count.test.ts" },
  "fine-strands": { cells: 15, instead: "counts as products of members and wires, in strand-count.test.ts" },
  "conduit-area": {
    cells: 192,
    instead: "IMC, FMC and LFMC: area by diameter and the four shares of it, in relations.test.ts",
  },
  "insulation-types": { cells: 51, instead: "what the letters of a type say, in relations.test.ts" },
  "k-factors": { cells: 60, instead: "k by the two temperatures and the metal's constants, in relations.test.ts" },
  "temperature-rise": { cells: 4, instead: "the actions are in our own words; the ends of the grades are held" },
  "marking-codes": { cells: 14, instead: "the note is in our own words; metals, temperature and intermix are held" },
};
