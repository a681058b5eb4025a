import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import { type Citation, citationText } from "../../core/citation.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Electrode } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import { electrodeCap, electrodeConductorCell, ROD_ALUMINUM, ROD_COPPER } from "../../core/electrode-conductor.js";
import type { Step } from "../../core/finding.js";
import { awgOrKcmil, writeArea } from "../../core/grounding-area.js";
import { isRefused } from "../../core/table.js";
import { type SupplyConductors, supplyArea } from "./supply-area.js";

const NAME = "electrode-conductor";

export interface ElectrodeConductorQuestion {
  /** The largest ungrounded service conductor. */
  readonly service?: SupplyConductors;
  readonly metal: ConductorMetal;
  readonly electrode?: Electrode;
  /** The conductor serves only this electrode and does not go on to another. */
  readonly soleConnection?: boolean;
  /** The ring's own conductor, where the electrode is a ground ring. */
  readonly ringSize?: string;
}

/**
 * How large must a grounding electrode conductor be?
 *
 * NFPA 70 250.66 (2017, 2020, 2023), in our words: the size of the table by the area of the ungrounded service conductor in
 * kcmil, all sets of a phase together; where it serves only rods, pipes or plates no larger than 6 AWG copper or 4 AWG
 * aluminum, only a concrete-encased electrode no larger than 4 AWG copper, only a ground ring no larger than the ring.
 * Worked: three sets of 600 kcmil copper, 1800 kcmil: 3/0 AWG copper; to a rod alone 6 AWG.
 * Silent: taps to several disconnects (250.64(D)); aluminum to concrete, which has no limit of its own here.
 */
export const electrodeConductor: Calculation<ElectrodeConductorQuestion> = {
  name: NAME,
  title: "Size of a grounding electrode conductor",
  clauses: [
    "electrodeConductorSize",
    "electrodeConductorToRod",
    "electrodeConductorToConcrete",
    "electrodeConductorToRing",
    "electrodeConductorAluminum",
    "conductorAreas",
  ],
  needs: ["question/service", "question/metal", "question/electrode", "question/soleConnection", "question/ringSize"],
  cannotSee: "whether the conductor goes on to another electrode",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const { clauses, tables } = edition;
    const cite = clauses.electrodeConductorSize;
    const { service, metal } = question;
    if (service === undefined)
      return sheet.ask(
        "question/service",
        "The service conductors are not given, and the electrode conductor goes by their area.",
        cite,
      );
    const area = supplyArea(sheet, service, "question/service", "service", edition);
    if (isClosed(area)) return area;
    const metalStep = sheet.given("metal of the electrode conductor", metal, "question/metal");
    const cell = electrodeConductorCell(service.metal, Number(area.value), metal, edition);
    if (isRefused(cell)) return sheet.outsideTable(cell, tables.electrodeConductorCopperService.cite);
    const byService = sheet.read("least size by the service", cell, [area, metalStep]);
    const cap = capStep(sheet, question, byService, metalStep, edition);
    if (cap !== undefined && isClosed(cap)) return cap;
    return finish(sheet, metal, service, byService, cap, edition);
  },
};

interface CapStep {
  readonly step: Step;
  readonly cite: Citation;
}

/** The largest size that is asked for to this electrode alone; asked about only where it is below the table's. */
function capStep(
  sheet: CalculationSheet,
  question: ElectrodeConductorQuestion,
  byService: Step,
  metalStep: Step,
  edition: Edition,
): CapStep | CalculationFinding | undefined {
  const { clauses } = edition;
  const { electrode, soleConnection, metal } = question;
  const kcmil = sizeOf(String(byService.value)).areaKcmil;
  const least = sizeOf((metal === "copper" ? ROD_COPPER : ROD_ALUMINUM).size).areaKcmil;
  if (soleConnection === false || kcmil <= least) return undefined;
  if (electrode === undefined)
    return sheet.ask(
      "question/electrode",
      "A smaller conductor is enough to some electrodes; which one it serves is not given.",
      clauses.electrodeConductorSize,
    );
  const cap = electrodeCap(electrode, metal);
  // A ring is copper: of its size aluminum would conduct less.
  const isRing = electrode === "ground-ring" && metal === "copper";
  if (cap === undefined && !isRing) return undefined;
  if (cap !== undefined && kcmil <= sizeOf(cap.size).areaKcmil) return undefined;
  if (soleConnection === undefined)
    return sheet.ask(
      "question/soleConnection",
      "A smaller conductor is enough if it serves this electrode alone; whether it goes on to another is not given.",
      clauses.electrodeConductorSize,
    );
  const where = sheet.given("electrode", electrode, "question/electrode");
  const alone = sheet.given("serves this electrode alone", true, "question/soleConnection");
  if (cap !== undefined) {
    const cite = clauses[cap.clause];
    return {
      step: sheet.state("largest size asked for to it alone", cap.size, cite, undefined, [where, alone, metalStep]),
      cite,
    };
  }
  return ringCap(sheet, question.ringSize, edition);
}

function ringCap(
  sheet: CalculationSheet,
  ringSize: string | undefined,
  { clauses }: Edition,
): CapStep | CalculationFinding {
  const cite = clauses.electrodeConductorToRing;
  if (ringSize === undefined)
    return sheet.ask(
      "question/ringSize",
      "The conductor to a ground ring need not be larger than the ring; the ring's size is not given.",
      cite,
    );
  if (awgOrKcmil(ringSize) === undefined)
    return sheet.refuse("OUTSIDE_TABLE", `The ring must be given in AWG or kcmil, not as ${ringSize}.`, cite);
  return { step: sheet.given("size of the ring", ringSize, "question/ringSize"), cite };
}

function finish(
  sheet: CalculationSheet,
  metal: ConductorMetal,
  { sets, size: serviceSize }: SupplyConductors,
  byService: Step,
  cap: CapStep | undefined,
  edition: Edition,
): CalculationFinding {
  const { clauses } = edition;
  const tableArea = writeArea(sheet, sizeOf(String(byService.value)), [byService], edition);
  let size = byService;
  let cite = clauses.electrodeConductorSize;
  let because = `the service of ${sets === 1 ? "" : `${String(sets)} x `}${serviceSize} asks for it`;
  const uses: Step[] = [byService];
  if (cap !== undefined) {
    const capArea = writeArea(sheet, sizeOf(String(cap.step.value)), [cap.step], edition);
    uses.push(cap.step);
    if (sheet.compare("the electrode alone asks for less", capArea, "<", tableArea, cap.cite)) {
      size = cap.step;
      cite = cap.cite;
      because = "it serves this electrode alone";
    }
    uses.push(sheet.last);
  }
  const result = sheet.conclude("smallest size", size.value, uses, because, cite);
  return sheet.finish({
    sentence: `The electrode conductor is ${String(size.value)} ${metalWords(metal)} or larger: ${because}.`,
    cite,
    results: [
      { name: "smallest size", step: result },
      { name: "size by the service", step: byService },
    ],
    advice:
      metal === "copper"
        ? []
        : [
            `Aluminum is kept away from earth, masonry and corrosion: ${citationText(clauses.electrodeConductorAluminum)}.`,
          ],
  });
}
