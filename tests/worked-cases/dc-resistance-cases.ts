/** Direct-current resistance: NFPA 70 Chapter 9 Table 8, ohms per 1000 ft at 75 C, and other temperatures. */
import type { DcResistanceQuestion } from "@landfast/rules";
import { celsius } from "./plain-run.js";
import { nbsHandbook, nfpa70, studyText } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"dc-resistance">;

const UNCOATED = { metal: "copper", stranding: "stranded", coating: "uncoated", temperature: celsius(75) } as const;

/** Chapter 9 Table 8, stranded unless said: what is asked beside the size, size, ohms per 1000 ft. */
const TABLE: readonly (readonly [string, Omit<DcResistanceQuestion, "size">, string, number])[] = [
  ["uncoated copper", UNCOATED, "14 AWG", 3.14],
  ["uncoated copper", UNCOATED, "12 AWG", 1.98],
  ["uncoated copper", UNCOATED, "10 AWG", 1.24],
  ["uncoated copper", UNCOATED, "8 AWG", 0.778],
  ["uncoated copper", UNCOATED, "6 AWG", 0.491],
  ["uncoated copper", UNCOATED, "2 AWG", 0.194],
  ["uncoated copper", UNCOATED, "1/0 AWG", 0.122],
  ["uncoated copper", UNCOATED, "4/0 AWG", 0.0608],
  ["uncoated copper", UNCOATED, "250 kcmil", 0.0515],
  ["uncoated copper", UNCOATED, "500 kcmil", 0.0258],
  ["uncoated copper", UNCOATED, "1000 kcmil", 0.0129],
  ["solid copper", { ...UNCOATED, stranding: "solid" }, "14 AWG", 3.07],
  ["solid copper", { ...UNCOATED, stranding: "solid" }, "12 AWG", 1.93],
  ["solid copper", { ...UNCOATED, stranding: "solid" }, "10 AWG", 1.21],
  ["coated copper", { ...UNCOATED, coating: "coated" }, "12 AWG", 2.05],
  ["coated copper", { ...UNCOATED, coating: "coated" }, "4 AWG", 0.321],
  ["aluminum", { metal: "aluminum", stranding: "stranded", temperature: celsius(75) }, "4 AWG", 0.508],
  ["aluminum", { metal: "aluminum", stranding: "stranded", temperature: celsius(75) }, "1/0 AWG", 0.201],
  ["aluminum", { metal: "aluminum", stranding: "stranded", temperature: celsius(75) }, "4/0 AWG", 0.1],
  ["aluminum", { metal: "aluminum", stranding: "stranded", temperature: celsius(75) }, "500 kcmil", 0.0424],
];

function cells(): readonly PublishedCase<"dc-resistance">[] {
  return TABLE.map(([name, conductor, size, ohms]) => ({
    id: `dc-resistance/table-8/${name}/${size}`,
    question: `Resistance of 1000 ft of ${size} ${name} at 75 C?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Chapter 9 Table 8, ${name}, ${size}`),
    asked: { ...conductor, size },
    expected: [{ value: ohms, unit: "ohm/kft" }],
  }));
}

/** Solid copper at 25 C as a study text lists it without its temperature: size, ohms per 1000 ft. */
const AT_25: readonly (readonly [string, number])[] = [
  ["18 AWG", 6.505],
  ["16 AWG", 4.091],
  ["14 AWG", 2.573],
];

function at25(): readonly PublishedCase<"dc-resistance">[] {
  return AT_25.map(([size, ohms]) => ({
    id: `dc-resistance/at-25/${size}`,
    question: `Resistance of 1000 ft of solid ${size} copper at 25 C?`,
    kind: "published",
    form: "example",
    source: studyText(`on conductor resistance: ${String(ohms)} ohm per 1000 ft of annealed copper`),
    asked: { ...UNCOATED, stranding: "solid", size, temperature: celsius(25) },
    // Half a percent: two printings rounded to three and four figures.
    expected: [{ value: ohms, unit: "ohm/kft", within: ohms * 0.005 }],
    note: "The text names no temperature; its figures are those of the copper wire tables at 25 C.",
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "dc-resistance/400-ft-of-18-awg",
    question: "400 ft of 18 AWG copper?",
    kind: "published",
    form: "example",
    source: studyText("on conductor resistance: 6.505 x 400 / 1000 = 2.602 ohm"),
    asked: {
      ...UNCOATED,
      stranding: "solid",
      size: "18 AWG",
      temperature: celsius(25),
      length: { value: 400, unit: "ft" },
    },
    expected: [{ value: 2.602, unit: "ohm", within: 0.013 }],
    note: "The text names no temperature; its figure is that of 25 C.",
  },
  {
    id: "dc-resistance/4-awg-at-20-c",
    question: "1000 ft of solid copper as thick as 10 AWG at 20 C?",
    kind: "published",
    form: "table",
    source: nbsHandbook("annealed copper at 20 C, 10 AWG: 0.9989 ohm per 1000 ft"),
    asked: { ...UNCOATED, stranding: "solid", size: "10 AWG", temperature: celsius(20) },
    expected: [{ value: 0.9989, unit: "ohm/kft", within: 0.005 }],
  },
  {
    id: "dc-resistance/coating-not-said",
    question: "12 AWG copper, no word about a coating?",
    kind: "hand",
    working: "1.98 uncoated, 2.05 coated: it is asked",
    asked: { metal: "copper", stranding: "stranded", temperature: celsius(75), size: "12 AWG" },
    expected: [{ missing: "question/coating" }],
  },
  {
    id: "dc-resistance/meters",
    question: "30.48 m of 4 AWG stranded copper at 75 C?",
    kind: "hand",
    working: "30.48 m = 100 ft; 0.308 x 100 / 1000 = 0.0308 ohm",
    asked: { ...UNCOATED, size: "4 AWG", length: { value: 30.48, unit: "m" } },
    expected: [{ value: 0.0308, unit: "ohm" }],
  },
];

export const DC_RESISTANCE_CASES: readonly Case[] = [...EXAMPLES, ...at25(), ...cells()];
