/** Why answers differ: each kind of change by the clause that changed. */
export interface Reason {
  /** Matches "2017 -> 2020 rule: before -> after". */
  readonly change: RegExp;
  readonly clause: string;
  readonly because: string;
}

export const REASONS: readonly Reason[] = [
  {
    change: /^2017 -> 20\d\d line-side-mark/,
    clause: "230.46",
    because: "2020 asks for the line-side mark on joints of service conductors made from 2023-01-01 on; 2023 always",
  },
  {
    change: /^2020 -> 2023 line-side-mark/,
    clause: "230.46",
    because: "2023 asks for the line-side mark whatever the day of installation",
  },
  {
    change: /^20\d\d -> 20\d\d condition (photograph-mark|advise-owner-later-rule)/,
    clause: "230.46",
    because: "the mark that is asked for is photographed; where it is not asked for yet, the owner is told",
  },
  {
    change: /^2017 -> 20\d\d duty tighten-once/,
    clause: "110.14(D)",
    because: "2017 asks for a calibrated torque tool; 2020 for an approved means, which a breakaway head is too",
  },
  {
    change: /^2017 -> 20\d\d unlike-metals/,
    clause: "110.14",
    because: "from 2020 on copper and copper-clad aluminum do not count as unlike metals",
  },
  {
    change: /^2017 -> 20\d\d bonding-jumper-size/,
    clause: "250.104(A)",
    because: "from 2020 on the jumper of a water pipe need not be larger than 3/0 AWG copper or 250 kcmil aluminum",
  },
  {
    change: /^2017 -> 20\d\d box-fill, volume/,
    clause: "314.16(B)(5)",
    because:
      "from 2020 on four equipment grounds take one allowance and each further one a quarter; sets are not counted apart",
  },
  {
    change: /^2020 -> 2023 box-fill, volume|^20\d\d -> 2023 box-fill(?::|, box is large enough|, refusal)/,
    clause: "314.16(B)(6)",
    because: "2023 counts one allowance for each terminal block, and refuses one with a size outside the table",
  },
  {
    change: /^20\d\d -> 2023 overcurrent-device, smallest device: 15 A -> 10 A/,
    clause: "240.6(A)",
    because: "2023 lists 10 A for breakers too",
  },
  {
    change: /^20\d\d -> 20\d\d verdict: /,
    clause: "230.46, 110.14, 250.104(A)",
    because: "follows from the rules above in the same joint",
  },
];
