/** Grounding electrode conductors: NFPA 70 Table 250.66 and its limits (A), (B), (C). */
import type { ConductorMetal } from "@landfast/rules";
import { nfpa70, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"electrode-conductor">;

/** Table 250.66: service conductor and metal, electrode conductor of copper, of aluminum. Each row at its upper end. */
const TABLE: readonly (readonly [ConductorMetal, string, string, string])[] = [
  ["copper", "2 AWG", "8 AWG", "6 AWG"],
  ["copper", "1/0 AWG", "6 AWG", "4 AWG"],
  ["copper", "3/0 AWG", "4 AWG", "2 AWG"],
  ["copper", "350 kcmil", "2 AWG", "1/0 AWG"],
  ["copper", "600 kcmil", "1/0 AWG", "3/0 AWG"],
  ["copper", "1000 kcmil", "2/0 AWG", "4/0 AWG"],
  ["copper", "1250 kcmil", "3/0 AWG", "250 kcmil"],
  ["aluminum", "1/0 AWG", "8 AWG", "6 AWG"],
  ["aluminum", "3/0 AWG", "6 AWG", "4 AWG"],
  ["aluminum", "250 kcmil", "4 AWG", "2 AWG"],
  ["aluminum", "500 kcmil", "2 AWG", "1/0 AWG"],
  ["aluminum", "900 kcmil", "1/0 AWG", "3/0 AWG"],
  ["aluminum", "1750 kcmil", "2/0 AWG", "4/0 AWG"],
];

function cell(
  [service, size]: readonly [ConductorMetal, string, string, string],
  metal: ConductorMetal,
  expected: string,
): PublishedCase<"electrode-conductor"> {
  return {
    id: `electrode-conductor/table-250.66/${service}/${size}/${metal}`,
    question: `Which ${metal} from a service of ${size} ${service} to the water pipe?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table 250.66, ${size} ${service}, ${metal}`),
    asked: { service: { size, metal: service, sets: 1 }, metal, electrode: "water-pipe", soleConnection: false },
    expected: [{ value: expected }],
  };
}

const EXAMPLES: readonly Case[] = [
  {
    id: "electrode-conductor/2-0-to-water-pipe",
    question: "The largest conductor is 2/0 AWG copper: which copper to the water pipe?",
    kind: "published",
    form: "example",
    source: tradeForum("on sizing the electrode conductor of a four-unit house: 4 AWG"),
    asked: {
      service: { size: "2/0 AWG", metal: "copper", sets: 1 },
      metal: "copper",
      electrode: "water-pipe",
      soleConnection: false,
    },
    expected: [{ value: "4 AWG" }],
  },
  {
    id: "electrode-conductor/concrete",
    question: "A large service to the footing alone: is more than 4 AWG copper needed?",
    kind: "published",
    form: "example",
    source: tradeForum("on the electrode conductor of a motor control center: to the footing 4 AWG only"),
    asked: {
      service: { size: "500 kcmil", metal: "copper", sets: 2 },
      metal: "copper",
      electrode: "concrete-encased-rebar",
      soleConnection: true,
    },
    expected: [{ value: "4 AWG" }],
  },
  {
    id: "electrode-conductor/rod",
    question: "A rod beside the water pipe: is more than 6 AWG copper needed?",
    kind: "published",
    form: "example",
    source: tradeForum("on the size of a supplemental electrode's connection, to the 2008 edition: 6 AWG"),
    asked: {
      service: { size: "4/0 AWG", metal: "copper", sets: 2 },
      metal: "copper",
      electrode: "copper-bonded-rod",
      soleConnection: true,
    },
    expected: [{ value: "6 AWG" }],
  },
  {
    id: "electrode-conductor/two-sets-of-3-0",
    question: "Two sets of 3/0 AWG copper: which copper to the water pipe?",
    kind: "published",
    form: "example",
    source: tradeForum("on the electrode conductor of a motor control center"),
    printed: "1/0 AWG, because 335 600 circular mils come nearest to 350 kcmil",
    asked: {
      service: { size: "3/0 AWG", metal: "copper", sets: 2 },
      metal: "copper",
      electrode: "water-pipe",
      soleConnection: false,
    },
    expected: [{ value: "2 AWG" }],
    note: "335 600 circular mils stand in the row over 3/0 AWG through 350 kcmil, which gives 2 AWG; 1/0 AWG is the next row, over 350 kcmil. The same forum's colleagues read 2 AWG from the like table for bonding jumpers.",
  },
  {
    id: "electrode-conductor/rod-in-passing",
    question: "A rod from which the conductor goes on to the footing, service of 4/0 AWG copper?",
    kind: "hand",
    working: "not to a rod alone, so 250.66(A) does not limit it: over 3/0 AWG through 350 kcmil, 2 AWG",
    asked: {
      service: { size: "4/0 AWG", metal: "copper", sets: 1 },
      metal: "copper",
      electrode: "copper-bonded-rod",
      soleConnection: false,
    },
    expected: [{ value: "2 AWG" }],
  },
];

export const ELECTRODE_CONDUCTOR_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...TABLE.flatMap((row) => [cell(row, "copper", row[2]), cell(row, "aluminum", row[3])]),
];
