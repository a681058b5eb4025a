import type { Citation } from "../../core/citation.js";
import {
  ampacityCell,
  amperesText,
  conductorText,
  isBuildingWire,
  temperatureColumn,
} from "../../core/conductor-ampacity.js";
import { conductorPath } from "../../core/conductor-path.js";
import { sizeOf } from "../../core/conductor-size.js";
import { listWords, metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { isAsked, writeLoad } from "../../core/joint-load.js";
import type { ProjectDemand } from "../../core/project-rule.js";
import { celsius } from "../../core/quantity.js";
import type { JointSubject } from "../../core/rule.js";
import { isRefused } from "../../core/table.js";
import type { Worksheet } from "../../core/worksheet.js";

/** How a joint stands to one demand of the project. */
export type Judged =
  | { readonly outcome: "pass"; readonly uses: readonly Step[] }
  | {
      readonly outcome: "fail";
      readonly uses: readonly Step[];
      readonly because: string;
      readonly required: string;
      readonly offered: string;
      readonly fix: string;
    }
  | { readonly outcome: "missing"; readonly path: string; readonly because: string };

type Demand<Kind extends ProjectDemand["kind"]> = Extract<ProjectDemand, { kind: Kind }>;

/** What every demand is judged with. */
interface Judging {
  readonly worksheet: Worksheet;
  readonly subject: JointSubject;
  readonly cite: Citation;
  readonly edition: Edition;
}

/**
 * Judges a joint by one demand and writes down how.
 * @throws RangeError when a size of the demand or of the joint cannot be read: callers validate sizes first.
 */
export function judgeDemand(
  worksheet: Worksheet,
  subject: JointSubject,
  demand: ProjectDemand,
  cite: Citation,
  edition: Edition,
): Judged {
  const judging: Judging = { worksheet, subject, cite, edition };
  switch (demand.kind) {
    case "forbid-family":
      return forbidden(judging, "family", subject.connector.family, demand.families);
    case "forbid-construction":
      return forbidden(judging, "construction", subject.connector.construction, demand.constructions);
    case "forbid-part":
      return forbiddenPart(judging, demand);
    case "forbid-metal":
      return forbiddenMetal(judging, demand);
    case "require-family":
      return required(judging, "family", subject.connector.family, demand.families);
    case "require-construction":
      return required(judging, "construction", subject.connector.construction, demand.constructions);
    case "require-holes":
      return requiredHoles(judging, demand);
    case "require-body":
      return requiredBody(judging, demand);
    case "cap-terminal-temperature":
      return cappedTemperature(judging, demand);
    case "cap-conductors-per-opening":
      return cappedConductors(judging, demand);
    case "cap-size":
      return cappedSize(judging, demand);
  }
}

function forbidden(
  { worksheet, subject, cite }: Judging,
  what: "family" | "construction",
  word: string,
  words: readonly string[],
): Judged {
  const given = worksheet.given(`${what} of the connector`, word, `${subject.origin}/${what}`);
  const list = worksheet.state(`${what} that the project forbids`, words, cite);
  const stands = worksheet.compare("the project forbids it", given, "in", list, cite);
  const uses = [worksheet.last];
  return stands
    ? {
        outcome: "fail",
        uses,
        because: `it forbids a connector of the ${what} ${word}`,
        required: `any ${what} but ${listWords(words)}`,
        offered: word,
        fix: `a connector of another ${what}`,
      }
    : { outcome: "pass", uses };
}

function required(
  { worksheet, subject, cite }: Judging,
  what: "family" | "construction",
  word: string,
  words: readonly string[],
): Judged {
  const given = worksheet.given(`${what} of the connector`, word, `${subject.origin}/${what}`);
  const list = worksheet.state(`${what} that the project asks for`, words, cite);
  const stands = worksheet.compare("it is what the project asks for", given, "in", list, cite);
  const uses = [worksheet.last];
  return stands
    ? { outcome: "pass", uses }
    : {
        outcome: "fail",
        uses,
        because: `it asks for a connector of the ${what} ${anyOf(words)}, and this is ${word}`,
        required: anyOf(words),
        offered: word,
        fix: `a connector of the ${what} ${anyOf(words)}`,
      };
}

function forbiddenPart({ worksheet, subject, cite }: Judging, { partNumbers }: Demand<"forbid-part">): Judged {
  const { partNumber } = subject.connector;
  const list = worksheet.state("parts that the project forbids", partNumbers, cite);
  if (partNumber === undefined) {
    if (subject.origin === "connector")
      return {
        outcome: "missing",
        path: "connector/partNumber",
        because: "The project forbids certain parts, and which part this is, is not given.",
      };
    const own = worksheet.conclude(
      "the terminal is no part of its own",
      true,
      [list],
      "it came with its equipment and has no part number",
      cite,
    );
    return { outcome: "pass", uses: [own] };
  }
  const given = worksheet.given("part number", partNumber, `${subject.origin}/partNumber`);
  const stands = worksheet.compare("the project forbids it", given, "in", list, cite);
  const uses = [worksheet.last];
  return stands
    ? {
        outcome: "fail",
        uses,
        because: `it forbids ${partNumber}`,
        required: `any part but ${listWords(partNumbers)}`,
        offered: partNumber,
        fix: "another part",
      }
    : { outcome: "pass", uses };
}

function forbiddenMetal({ worksheet, subject, cite }: Judging, { metals }: Demand<"forbid-metal">): Judged {
  const list = worksheet.state("metals of conductors that the project forbids", metals, cite);
  const uses: Step[] = [];
  for (const [group, { metal, size }] of subject.joint.conductors.entries()) {
    const given = worksheet.given("metal of the conductor", metal, conductorPath(group, "metal"));
    const stands = worksheet.compare("the project forbids it", given, "in", list, cite);
    uses.push(worksheet.last);
    if (stands)
      return {
        outcome: "fail",
        uses: [worksheet.last],
        because: `it forbids conductors of ${metalWords(metal)}, and the ${size} is one`,
        required: `no conductor of ${listWords(metals.map(metalWords))}`,
        offered: metalWords(metal),
        fix: "a conductor of another metal",
      };
  }
  return { outcome: "pass", uses };
}

function requiredHoles({ worksheet, subject, cite }: Judging, { holes }: Demand<"require-holes">): Judged {
  const { mounting } = subject.connector;
  const least = worksheet.state("holes that the project asks for", holes, cite, "holes");
  const kind = worksheet.given("how the part is fixed", mounting.kind, `${subject.origin}/mounting/kind`);
  const fail = (offered: string, uses: readonly Step[]): Judged => ({
    outcome: "fail",
    uses,
    because: `it asks for a lug of ${String(holes)} or more holes, and this is ${offered}`,
    required: `a lug of ${String(holes)} or more holes`,
    offered,
    fix: `a lug of ${String(holes)} or more holes`,
  });
  if (mounting.kind !== "pad") return fail("no lug with a tongue", [kind, least]);
  const { pattern } = mounting;
  const given = worksheet.given(
    "holes of its tongue",
    pattern.holes,
    `${subject.origin}/mounting/pattern/holes`,
    "holes",
  );
  const enough = worksheet.compare("it has as many holes", given, ">=", least, cite);
  const uses = [worksheet.last];
  return enough ? { outcome: "pass", uses } : fail(`a lug of ${String(pattern.holes)}`, uses);
}

function requiredBody(judging: Judging, { bodyMetals, platings }: Demand<"require-body">): Judged {
  const { bodyMetal, plating } = judging.subject.connector;
  const metal = bodyWord(judging, "body", "bodyMetal", bodyMetal, bodyMetals);
  const coat = bodyWord(judging, "plating", "plating", plating, platings);
  const uses: Step[] = [];
  // A refusal by one of the two needs no word about the other.
  for (const one of [metal, coat]) if (one.outcome === "fail") return one;
  for (const one of [metal, coat]) {
    if (one.outcome === "missing") return one;
    if (one.outcome === "pass") uses.push(...one.uses);
  }
  return { outcome: "pass", uses };
}

function bodyWord(
  { worksheet, subject, cite }: Judging,
  part: "body" | "plating",
  field: "bodyMetal" | "plating",
  word: string | undefined,
  words: readonly string[] | undefined,
): Judged {
  if (words === undefined) return { outcome: "pass", uses: [] };
  const path = `${subject.origin}/${field}`;
  if (word === undefined)
    return {
      outcome: "missing",
      path,
      because: `The project asks for a ${part} of ${anyOf(words)}, and that of the connector is not given.`,
    };
  const given = worksheet.given(`metal of the ${part}`, word.toLowerCase(), path);
  const list = worksheet.state(
    `metal of the ${part} that the project asks for`,
    words.map((one) => one.toLowerCase()),
    cite,
  );
  const stands = worksheet.compare("it is what the project asks for", given, "in", list, cite);
  const uses = [worksheet.last];
  return stands
    ? { outcome: "pass", uses }
    : {
        outcome: "fail",
        uses,
        because: `it asks for a ${part} of ${anyOf(words)}, and this has ${word}`,
        required: anyOf(words),
        offered: word,
        fix: `a connector with a ${part} of ${anyOf(words)}`,
      };
}

/** "tin", "tin or silver", "tin, silver or nickel". */
function anyOf(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}

/** The load against the ampacity in the column of the cap; the code's own limit is asked by the code's own rule. */
function cappedTemperature(judging: Judging, { temperature }: Demand<"cap-terminal-temperature">): Judged {
  const { worksheet, subject, cite, edition } = judging;
  const { joint } = subject;
  const cap = worksheet.state("temperature that the project allows", celsius(temperature), cite, "Cel");
  if (joint.role !== "phase" && joint.role !== "neutral") {
    const role = worksheet.given("role of the conductor", joint.role, "joint/role");
    const without = worksheet.conclude("it carries a load", false, [role, cap], "by its role it carries none", cite);
    return { outcome: "pass", uses: [without] };
  }
  const column = temperatureColumn(celsius(temperature));
  if (column === undefined)
    return {
      outcome: "missing",
      path: "projectRules",
      because: "The ampacity tables have no column as low as the temperature that the project allows.",
    };
  const load = writeLoad(worksheet, joint.circuit, edition);
  if (!isAsked(load)) return carried(judging, column, cap, load);
  // No load of a circuit exceeds the device ahead: a conductor that carries even that needs no load given.
  const protection = joint.circuit?.protection;
  if (protection?.kind === "device") {
    const most = worksheet.given(
      "load: at most the rating of the device ahead",
      protection.ratingA,
      "joint/circuit/protection/ratingA",
      "A",
    );
    const judged = carried(judging, column, cap, most);
    if (judged.outcome === "pass") return judged;
  }
  return { outcome: "missing", path: load.path, because: load.because };
}

function carried({ worksheet, subject, cite, edition }: Judging, column: 60 | 75 | 90, cap: Step, load: Step): Judged {
  const { joint } = subject;
  const sets = joint.circuit?.sets ?? 1;
  const uses: Step[] = [];
  let unread: Judged | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    if (!isBuildingWire(conductor)) continue;
    const { size, metal } = conductor;
    const cell = ampacityCell(edition, metal, size, column);
    if (isRefused(cell)) {
      unread ??= {
        outcome: "missing",
        path: conductorPath(group, "size"),
        because: `What ${conductorText(1, size, metal)} carries at ${String(column)} C is not in the ampacity table.`,
      };
      continue;
    }
    const sizeStep = worksheet.given("size", size, conductorPath(group, "size"));
    const one = worksheet.read(`ampacity at ${String(column)} C`, cell, [sizeStep, cap]);
    const all =
      sets === 1
        ? one
        : worksheet.multiply(
            "ampacity of all sets",
            [one, worksheet.given("conductors in parallel", sets, "joint/circuit/sets")],
            "A",
          );
    const holds = worksheet.compare("the ampacity carries the load", all, ">=", load, cite);
    uses.push(worksheet.last);
    if (!holds)
      return {
        outcome: "fail",
        uses: [worksheet.last],
        because: `at the ${String(column)} C it allows, ${conductorText(sets, size, metal)} carries ${amperesText(Number(all.value))}, less than the load of ${amperesText(Number(load.value))}`,
        required: `${amperesText(Number(load.value))} at ${String(column)} C`,
        offered: amperesText(Number(all.value)),
        fix: "a larger conductor",
      };
  }
  if (unread !== undefined) return unread;
  return { outcome: "pass", uses: uses.length === 0 ? [cap] : uses };
}

function cappedConductors(
  { worksheet, subject, cite }: Judging,
  { conductors }: Demand<"cap-conductors-per-opening">,
): Judged {
  const most = worksheet.state("conductors that the project allows in an opening", conductors, cite, "conductors");
  const uses: Step[] = [most];
  for (const landing of subject.landings) {
    const inside = landing.conductors.reduce((sum, { count }) => sum + count, 0);
    const counted = worksheet.conclude(
      `conductors in opening ${landing.opening.id}`,
      inside,
      [],
      "as they lie in it",
      cite,
      "conductors",
    );
    const holds = worksheet.compare("no more than the project allows", counted, "<=", most, cite);
    uses.push(worksheet.last);
    if (!holds)
      return {
        outcome: "fail",
        uses: [worksheet.last],
        because: `it allows ${String(conductors)} in one opening, and ${String(inside)} lie in opening ${landing.opening.id}`,
        required: `at most ${String(conductors)} in one opening`,
        offered: String(inside),
        fix: "a connector with an opening for each of them",
      };
  }
  return { outcome: "pass", uses };
}

function cappedSize({ worksheet, subject, cite }: Judging, { families, size }: Demand<"cap-size">): Judged {
  const family = worksheet.given("family of the connector", subject.connector.family, `${subject.origin}/family`);
  const list = worksheet.state("families whose size the project limits", families, cite);
  if (!worksheet.compare("the project limits its size", family, "in", list, cite))
    return { outcome: "pass", uses: [worksheet.last] };
  const limit = worksheet.state(
    `area of ${size}, the largest size that the project allows`,
    sizeOf(size).areaKcmil,
    cite,
    "kcmil",
  );
  const uses: Step[] = [];
  for (const [group, conductor] of subject.joint.conductors.entries()) {
    const { text, areaKcmil } = sizeOf(conductor.size);
    const given = worksheet.given("size", text, conductorPath(group, "size"));
    const area = worksheet.conclude(`area of ${text}`, areaKcmil, [given], "by its size", cite, "kcmil");
    const holds = worksheet.compare("no larger than the project allows", area, "<=", limit, cite);
    uses.push(worksheet.last);
    if (!holds)
      return {
        outcome: "fail",
        uses: [worksheet.last],
        because: `it allows ${subject.connector.family} up to ${size} only, not with ${text}`,
        required: `at most ${size}`,
        offered: text,
        fix: "a connector of another family",
      };
  }
  return { outcome: "pass", uses };
}
