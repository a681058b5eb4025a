import { describe, expect, test } from "vitest";
import type { Insulation } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { Joint, Location, Protection } from "../../core/joint.js";
import type { Temperature } from "../../core/quantity.js";
import type { Rule } from "../../core/rule.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { deviceProtection } from "../overcurrent/device-protection.js";
import { feederTap } from "../taps/feeder-tap.js";
import { terminalTemperature } from "./terminal-temperature.js";

type Rating = 60 | 75 | 90 | "unmarked";

/** What can be known or not known about one joint. */
interface Facts {
  readonly terminal: Rating | undefined;
  readonly connector: Rating | undefined;
  readonly location: Location | undefined;
  readonly outdoors: boolean | undefined;
}

interface Question {
  readonly size: string;
  readonly insulation: Insulation;
  readonly loadA: number;
  readonly protection: Protection;
}

const RATINGS = [60, 75, 90, "unmarked"] as const;
const LOCATIONS = ["dry", "damp", "wet"] as const;

const rating = (value: Rating): Temperature | "unmarked" => (value === "unmarked" ? value : { value, unit: "Cel" });

function outcome(rule: Rule, question: Question, facts: Facts): string {
  const { protection } = question;
  const joint: Joint = {
    ...sampleJoint({
      function: "tap",
      conductors: [sampleConductor({ size: question.size, insulation: question.insulation, duty: "tap" })],
      equipment: { tag: "JB-1", kind: "box" },
      circuit: {
        sets: 1,
        loadA: question.loadA,
        protection:
          protection.kind === "feeder-tap" && facts.outdoors !== undefined
            ? { ...protection, outdoors: facts.outdoors }
            : protection,
        ...(facts.terminal === undefined ? {} : { endTerminalTemperature: rating(facts.terminal) }),
      },
    }),
  };
  const placed = facts.location === undefined ? withoutPlace(joint) : { ...joint, place: { location: facts.location } };
  const connector: Connector = sampleConnector({
    metalMarking: "CU",
    mounting: { kind: "free" },
    ...(facts.connector === undefined ? {} : { temperature: rating(facts.connector) }),
  });
  return rule.check(sampleSubject(placed, connector), nfpa70Edition2023).outcome;
}

function withoutPlace({ mark, role, quantity, conductors, circuit, equipment, function: use }: Joint): Joint {
  return {
    mark,
    function: use,
    role,
    quantity,
    conductors,
    ...(circuit === undefined ? {} : { circuit }),
    ...(equipment === undefined ? {} : { equipment }),
  };
}

/** Every way in which the facts that are not known could turn out. */
function completions(facts: Facts): Facts[] {
  const all: Facts[] = [];
  for (const terminal of facts.terminal === undefined ? RATINGS : [facts.terminal])
    for (const connector of facts.connector === undefined ? RATINGS : [facts.connector])
      for (const location of facts.location === undefined ? LOCATIONS : [facts.location])
        for (const outdoors of facts.outdoors === undefined ? [true, false] : [facts.outdoors])
          all.push({ terminal, connector, location, outdoors });
  return all;
}

function* partlyKnown(): Generator<Facts> {
  for (const terminal of [undefined, 60, 75, "unmarked"] as const)
    for (const connector of [undefined, 60, 75, 90, "unmarked"] as const)
      for (const location of [undefined, "dry", "wet"] as const)
        for (const outdoors of [undefined, true, false] as const) yield { terminal, connector, location, outdoors };
}

const device = (ratingA: number): Protection => ({ kind: "device", ratingA });
const tap = (feet: number, endDeviceA: number): Protection => ({
  kind: "feeder-tap",
  feederDeviceA: 400,
  length: { value: feet, unit: "ft" },
  endDeviceA,
  leavesEnclosure: true,
  physicallyProtected: true,
});

const QUESTIONS: readonly (readonly [Rule, readonly Question[]])[] = [
  [
    terminalTemperature,
    (["THHN", "XHHW", "TW", "THWN-2"] as const).flatMap((insulation) =>
      [90, 100, 120, 126, 151, 171].map((loadA) => ({ size: "1/0 AWG", insulation, loadA, protection: device(150) })),
    ),
  ],
  [
    deviceProtection,
    (["XHHW", "THWN-2"] as const).flatMap((insulation) =>
      [20, 125, 150, 175, 200].map((ratingA) => ({
        size: "1/0 AWG",
        insulation,
        loadA: 20,
        protection: device(ratingA),
      })),
    ),
  ],
  [
    feederTap,
    [8, 22, 40].flatMap((feet) =>
      [100, 130, 160, 180].map((end) => ({
        size: "1/0 AWG",
        insulation: "XHHW" as const,
        loadA: 90,
        protection: tap(feet, end),
      })),
    ),
  ],
];

// hand: what decides is checked against every way in which the unknown facts could turn out
describe.each(QUESTIONS.map(([rule, questions]) => ({ id: rule.id, rule, questions })))(
  "$id",
  ({ rule, questions }) => {
    test("settles without a fact only what no value of the fact could turn, and asks only for what could", () => {
      const wrong: string[] = [];
      for (const question of questions) {
        const known = new Map<string, string>();
        const whenKnown = (full: Facts): string => {
          const key = JSON.stringify(full);
          const found = known.get(key) ?? outcome(rule, question, full);
          known.set(key, found);
          return found;
        };
        for (const facts of partlyKnown()) {
          const said = outcome(rule, question, facts);
          const possible = new Set(completions(facts).map(whenKnown));
          const right = said === "missing" ? possible.size > 1 : possible.size === 1 && possible.has(said);
          if (!right)
            wrong.push(
              `${JSON.stringify(question)} ${JSON.stringify(facts)}: ${said}, possible ${[...possible].join(", ")}`,
            );
        }
      }
      expect(wrong).toEqual([]);
    });
  },
);
