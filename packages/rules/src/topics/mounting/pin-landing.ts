import { type ConductorSize, sizeOf } from "../../core/conductor-size.js";
import { listWords, metalWords } from "../../core/conductor-words.js";
import type { Connector, SizeRange } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import { readMarking } from "../../core/marked-metals.js";
import { positionIn } from "../../core/opening-fit.js";
import { asking, type JointSubject, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
import { areaStep, rangeWords } from "../../core/size-area.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "pin-landing";
const TERMINAL = "joint/equipment/terminal";

type Pin = NonNullable<Connector["pin"]>;

/** A range of the terminal, and where it is given. */
interface TerminalRange {
  readonly range: SizeRange;
  readonly path: string;
}

/**
 * Does the equipment's own terminal take the pin of a pin adapter?
 *
 * NFPA 70 110.3(B) and 110.14 (2017, 2020, 2023), in our words: the pin lands in the terminal as a conductor of its size and metal would,
 * so the terminal's range and metal marking are kept by the pin. Sizes are compared by area, both ends included.
 * Worked: a pin of 1/0 AWG in a terminal of 12 AWG to 1/0 AWG: 105.6 kcmil <= 105.6 kcmil holds.
 * Silent: a terminal that is not described is asked for. Pins stand closer together than the conductors they replace, so
 * an acceptance hangs on their not touching.
 */
export const pinLanding: Rule = {
  id: ID,
  title: "Pin adapter in the terminal of the equipment",
  clauses: ["instructions", "terminals"],
  needs: ["connector/pin", "joint/equipment/terminal/openings/0/ranges", "joint/equipment/terminal/metalMarking"],
  cannotSee: "the distance between pins of neighboring poles",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    const cite = edition.clauses.instructions;
    const { pin } = connector;
    if (pin === undefined)
      return connector.family === "pin-adapter"
        ? asking(ID, new Worksheet(), `${origin}/pin`, "The size and metal of the adapter's pin are not known.", {
            cite,
            required: "a pin that the terminal takes",
          })
        : notApplicable(ID, "the connector has no pin");
    const terminal = joint.equipment?.terminal;
    if (terminal === undefined)
      return asking(
        ID,
        pinSteps(pin, origin).worksheet,
        TERMINAL,
        "The terminal of the equipment where the pin lands is not described.",
        {
          cite,
          required: `a terminal for ${pinWords(pin)}`,
        },
      );
    return inTerminal(subject, pin, terminal, edition);
  },
};

function inTerminal({ origin }: JointSubject, pin: Pin, terminal: Connector, edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const { worksheet, size, metal } = pinSteps(pin, origin);
  const ranges = rangesOf(terminal);
  const offered = ranges.map(({ range }) => rangeWords(range)).join("; ") || "not known";
  const required = `a terminal for ${pinWords(pin)}`;
  const text = { cite, required, offered };
  const wanted = sizeOf(pin.size);
  const comparable = ranges.filter(({ range }) => positionIn(range, wanted) !== "other-series");
  const taken = comparable.find(({ range }) => positionIn(range, wanted) === "within");
  const nearest = taken ?? nearestOf(comparable, wanted);
  const marking = readMarking(terminal, `${TERMINAL}/metalMarking`, isDevice(terminal), edition, worksheet);
  // A refusal goes before a question: of size first, then of metal.
  if (nearest !== undefined && taken === undefined) {
    compareSize(worksheet, size, wanted, nearest, cite);
    return settledFrom(ID, worksheet, text, {
      sentence: `The pin counts as ${pin.size}; the terminal takes ${offered}.`,
      fix: `an adapter with a pin that the terminal takes, ${offered}`,
    });
  }
  if (
    marking.kind === "metals" &&
    !worksheet.compare(
      "the terminal is marked for the metal of the pin",
      metal,
      "in",
      marking.step,
      edition.clauses.terminals,
    )
  )
    return settledFrom(ID, worksheet, text, {
      sentence: `The terminal ${marking.words}, so it is for ${listWords(marking.metals.map(metalWords))} only; the pin is of ${metalWords(pin.metal)}.`,
      offered: listWords(marking.metals.map(metalWords)),
      fix: `an adapter with a pin of ${listWords(marking.metals.map(metalWords))}`,
    });
  if (nearest === undefined)
    return asking(
      ID,
      worksheet,
      `${TERMINAL}/openings`,
      ranges.length === 0
        ? "The sizes that the terminal of the equipment takes are not known."
        : `The terminal is listed for ${offered}; whether it takes a pin of ${pin.size} is not known, and sizes are not converted.`,
      text,
    );
  if (marking.kind === "not-known")
    return asking(
      ID,
      worksheet,
      `${TERMINAL}/metalMarking`,
      "The metal marking of the terminal where the pin lands is not known.",
      text,
    );
  compareSize(worksheet, size, wanted, nearest, cite);
  return settledFrom(ID, worksheet, text, {
    sentence: `The pin counts as ${pin.size} ${metalWords(pin.metal)}, which the terminal takes (${rangeWords(nearest.range)}).`,
    conditions: [pinsApart(edition)],
  });
}

function pinSteps(pin: Pin, origin: string): { worksheet: Worksheet; size: Step; metal: Step } {
  const worksheet = new Worksheet();
  const size = areaStep(
    worksheet,
    sizeOf(pin.size),
    worksheet.given("size that the pin counts as", pin.size, `${origin}/pin/size`),
  );
  const metal = worksheet.given("metal of the pin", pin.metal, `${origin}/pin/metal`);
  return { worksheet, size, metal };
}

/** Both ends where the size is within; only the end it passes where it is not. */
function compareSize(
  worksheet: Worksheet,
  pin: Step,
  size: ConductorSize,
  { range, path }: TerminalRange,
  cite: CheckFinding["cite"],
): void {
  const limits = worksheet.given("range of the terminal", rangeWords(range), path);
  const position = positionIn(range, size);
  if (position !== "above")
    worksheet.compare("not below the smallest size", pin, ">=", areaStep(worksheet, sizeOf(range.from), limits), cite);
  if (position !== "below")
    worksheet.compare("not above the largest size", pin, "<=", areaStep(worksheet, sizeOf(range.to), limits), cite);
}

function isDevice({ family }: Connector): boolean {
  return family === "wiring-device-terminal";
}

function rangesOf({ openings }: Connector): TerminalRange[] {
  return openings.flatMap(({ ranges }, opening) =>
    ranges.map((range, index) => ({ range, path: `${TERMINAL}/openings/${opening}/ranges/${index}` })),
  );
}

function nearestOf(ranges: readonly TerminalRange[], size: ConductorSize): TerminalRange | undefined {
  let nearest: TerminalRange | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const one of ranges) {
    const away = Math.max(
      sizeOf(one.range.from).areaKcmil - size.areaKcmil,
      size.areaKcmil - sizeOf(one.range.to).areaKcmil,
    );
    if (!(away < least)) continue;
    least = away;
    nearest = one;
  }
  return nearest;
}

function pinWords({ size, metal }: Pin): string {
  return `a ${size} ${metalWords(metal)} pin`;
}

function pinsApart({ clauses }: Edition): Duty {
  return {
    duty: "keep-pins-apart",
    sentence: "See that pins of neighboring poles cannot touch, and insulate their barrels.",
    cite: clauses.instructions,
  };
}
