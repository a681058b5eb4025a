/** Room to bend, and room for splices. */
import type { BendingSpaceQuestion, WirewayFillQuestion } from "@landfast/rules";
import { main } from "./calculated.js";
import { circuit, conductor, finding, opening, splice, spliced } from "./described-joint.js";
import type { SiteQuestion } from "./site-question.js";

function space(size: string, change: Partial<BendingSpaceQuestion> = {}): unknown {
  return main("bending-space", {
    size,
    metal: "copper",
    stranding: "class-B",
    entry: "opposite",
    wiresPerTerminal: 1,
    removableTerminal: false,
    ...change,
  });
}

const IN_PANEL = { kind: "enclosure", section: { value: 16, unit: "in2" } } as const;

/** A splice in a panel's gutter of 16 in2: conductors and splices in in2. */
function spliceInPanel(conductors: number, splices: number): unknown {
  const joint = spliced([conductor("1/0 AWG", { count: 2 })], {
    circuit: circuit(100, 125, { endTerminalTemperature: { value: 75, unit: "Cel" } }),
    equipment: {
      tag: "P-1",
      kind: "panelboard",
      space: { ...IN_PANEL, conductors: { value: conductors, unit: "in2" }, splices: { value: splices, unit: "in2" } },
    },
  });
  const { verdict, conditions, findings } = finding(joint, splice([opening("6 AWG", "250 kcmil", { count: 2 })]));
  const told = conditions.some(({ duty }) => duty === "label-upstream-disconnect");
  const fill = findings.find(({ rule }) => rule === "enclosure-fill")?.outcome;
  return { fill, label: verdict === "reject" ? false : told };
}

function past4x4(count: number): unknown {
  const question: WirewayFillQuestion = {
    ask: "fill",
    kind: "enclosure",
    width: { value: 4, unit: "in" },
    height: { value: 4, unit: "in" },
    conductors: [{ kind: "conductor", count, size: "4/0 AWG", insulation: "THHN", stranding: "class-B" }],
  };
  return main("wireway-fill", question);
}

export const SPACE_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "How much space to bend 500 kcmil copper straight in?",
    answer: "14 in.",
    kind: "published",
    source: "NFPA 70-2023 Table 312.6(B)(2)",
    asked: () => space("500 kcmil"),
    expected: 14,
  },
  {
    question: "And from the side wall?",
    answer: "6 in.",
    kind: "published",
    source: "NFPA 70-2023 Table 312.6(A)",
    asked: () => space("500 kcmil", { entry: "side" }),
    expected: 6,
  },
  {
    question: "4/0 copper straight in, and 4/0 compact aluminum?",
    answer: "7 in and 6 in.",
    kind: "published",
    source: "NFPA 70-2023 Table 312.6(B)(2), column of compact aluminum AA-8000",
    asked: () => [space("4/0 AWG"), space("4/0 AWG", { metal: "aluminum", stranding: "compact" })],
    expected: [7, 6],
  },
  {
    question: "Two 4/0 to a phase, straight in, on one terminal?",
    answer: "7.5 in.",
    kind: "published",
    source: "NFPA 70-2023 Table 312.6(B)(2), two wires",
    asked: () => space("4/0 AWG", { wiresPerTerminal: 2 }),
    expected: 7.5,
  },
  {
    question: "May I splice in this panel?",
    answer: "Yes while conductors fill 40 % or less and all with splices 75 % or less there; and put the label on.",
    kind: "published",
    source: "NFPA 70-2023 312.8",
    // 40 % of 16 is 6.4 in2; 75 % is 12 in2
    asked: () => [spliceInPanel(6.4, 5.6), spliceInPanel(6.5, 5), spliceInPanel(6.4, 5.7)],
    expected: [
      { fill: "pass", label: true },
      { fill: "fail", label: false },
      { fill: "fail", label: false },
    ],
  },
  {
    question: "Twenty 4/0 THHN past a 4 x 4 in gutter?",
    answer: "No: 40.5 %. Nineteen are 38.4 %.",
    kind: "hand",
    source: "NFPA 70-2023 312.8; Chapter 9 Table 5: 20 x 0.3237 / 16 = 40.46 %, 19 x 0.3237 / 16 = 38.44 %",
    asked: () => [past4x4(20), past4x4(19)],
    expected: [false, true],
  },
];
