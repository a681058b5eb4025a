import { conductorPath } from "../../core/conductor-path.js";
import { sizeOf } from "../../core/conductor-size.js";
import { metalWords } from "../../core/conductor-words.js";
import type { CombinationPart } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty } from "../../core/finding.js";
import { asking, type JointSubject, type Landing, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { unlikeLandings } from "./landed-opening.js";
import { combinationFit, needsListedCombination } from "./opening-share.js";

const ID = "listed-combination";

/**
 * Is the combination of conductors one that the connector's package lists?
 *
 * NFPA 70 110.3(B) and 110.14(B) (2017, 2020, 2023), in our words: a splicing device is used as it is listed, and a twist-on
 * connector is listed for the combinations of its package and no others. The order of the conductors does not matter.
 * Worked: 1 x 12 AWG with 1 x 14 AWG stands in the package; five 12 AWG where the package stops at four does not.
 * Silent: there is no default combination, so a twist-on without its list is asked about. A list speaks of copper unless
 * the opening names other metals.
 */
export const listedCombination: Rule = {
  id: ID,
  title: "Listed combination of conductors",
  clauses: ["instructions", "splices"],
  needs: ["joint/conductors/0/size", "joint/conductors/0/count", "connector/openings/0/combinations"],
  cannotSee: "whether the package at hand is of this connector",
  check(subject, edition) {
    const { connector, landings } = subject;
    const governed = unlikeLandings(landings).filter(({ opening }) => needsListedCombination(connector, opening));
    if (governed.length === 0) return notApplicable(ID, "no opening takes listed combinations only");
    let questioned: CheckFinding | undefined;
    for (const landing of governed) {
      const fit = combinationFit(landing.opening, landing.conductors);
      if (fit === "refused") return refusedFinding(subject, edition, landing);
      questioned ??=
        fit === "unknown" ? asksForList(subject, edition, landing) : asksForMetal(subject, edition, landing);
    }
    return questioned ?? passedFinding(subject, edition, governed);
  },
};

function refusedFinding(subject: JointSubject, edition: Edition, landing: Landing): CheckFinding {
  const worksheet = new Worksheet();
  compareWithList(worksheet, subject, edition, landing);
  const words = combinationWords(landing);
  return settled(ID, worksheet, {
    sentence: `The package does not list ${words} for this connector.`,
    cite: edition.clauses.instructions,
    required: "a listed combination",
    offered: words,
    fix: "a connector whose package lists this combination, or a splice with an opening for each conductor",
  });
}

function passedFinding(subject: JointSubject, edition: Edition, governed: readonly Landing[]): CheckFinding {
  const worksheet = new Worksheet();
  for (const landing of governed) compareWithList(worksheet, subject, edition, landing);
  const words = governed.map(combinationWords).join("; ");
  return settled(ID, worksheet, {
    sentence: `The package lists ${words}.`,
    cite: edition.clauses.instructions,
    required: "a listed combination",
    offered: words,
    conditions: [followPackage(edition)],
  });
}

function asksForList({ origin }: JointSubject, edition: Edition, landing: Landing): CheckFinding {
  const worksheet = new Worksheet();
  contentStep(worksheet, landing);
  return asking(
    ID,
    worksheet,
    `${origin}/openings/${landing.openingIndex}/combinations`,
    "A twist-on connector takes only the combinations of its package, and they are not known.",
    { cite: edition.clauses.instructions, required: `a package that lists ${combinationWords(landing)}` },
  );
}

/** A list of sizes speaks of copper; other metals must be named for the opening. */
function asksForMetal({ origin }: JointSubject, edition: Edition, landing: Landing): CheckFinding | undefined {
  const { opening, openingIndex, conductors } = landing;
  const other = conductors.find(
    ({ conductor }) => conductor.metal !== "copper" && opening.shared?.metals?.includes(conductor.metal) !== true,
  );
  if (other === undefined) return undefined;
  const worksheet = new Worksheet();
  contentStep(worksheet, landing);
  worksheet.given("metal of the conductor", other.conductor.metal, conductorPath(other.group, "metal"));
  const metal = metalWords(other.conductor.metal);
  return asking(
    ID,
    worksheet,
    `${origin}/openings/${openingIndex}/shared/metals`,
    `The listed combinations speak of copper; whether they hold for ${metal} is not known.`,
    {
      cite: edition.clauses.instructions,
      required: `combinations listed for ${metal}`,
      offered: "combinations of copper",
    },
  );
}

function compareWithList(worksheet: Worksheet, { origin }: JointSubject, edition: Edition, landing: Landing): void {
  const { opening, openingIndex } = landing;
  const list = worksheet.given(
    "combinations of the package",
    (opening.combinations ?? []).map(partsWords),
    `${origin}/openings/${openingIndex}/combinations`,
  );
  worksheet.compare(
    "the package lists the combination",
    contentStep(worksheet, landing),
    "in",
    list,
    edition.clauses.instructions,
  );
}

function contentStep(worksheet: Worksheet, landing: Landing): ReturnType<Worksheet["conclude"]> {
  const sizes = landing.conductors.map(({ group, conductor }) =>
    worksheet.given("size of the conductors", conductor.size, conductorPath(group, "size")),
  );
  return worksheet.conclude(
    "conductors put together",
    combinationWords(landing),
    sizes,
    "as the conductors are landed",
  );
}

function combinationWords({ conductors }: Landing): string {
  return partsWords(conductors.map(({ conductor, count }) => ({ size: conductor.size, count })));
}

/** "1 x 12 AWG + 2 x 14 AWG": each size once, largest first, so that the order in which it was written does not matter. */
function partsWords(parts: readonly CombinationPart[]): string {
  const totals: { size: string; count: number }[] = [];
  for (const { size, count } of parts) {
    const known = totals.find((one) => one.size === size);
    if (known === undefined) totals.push({ size, count });
    else known.count += count;
  }
  return totals
    .sort((a, b) => sizeOf(b.size).areaKcmil - sizeOf(a.size).areaKcmil)
    .map(({ size, count }) => `${count} x ${size}`)
    .join(" + ");
}

function followPackage({ clauses }: Edition): Duty {
  return {
    duty: "follow-package-combination",
    sentence:
      "Make up the joint as the package shows for this combination: solid or stranded, strip length, twist and turns.",
    cite: clauses.instructions,
  };
}
