import type { ConductorGroup } from "../../core/conductor.js";
import { areaMm2, type ConductorSize, sizeOf } from "../../core/conductor-size.js";
import { conductorWords, listWords } from "../../core/conductor-words.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { areaStep } from "../../core/size-area.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "listing";
const REQUIRED = "a listing that covers the conductor";
const FIX = "a connector whose listing covers the conductor";

/** The listing whose scope ends at small conductors. */
const SPLICING_CONNECTORS = "UL 486C";

/** An end of that scope, as it is printed for both systems of sizes; the area of an AWG size is Chapter 9 Table 8's. */
interface ScopeEnd {
  readonly text: string;
  readonly areaKcmil: number;
  readonly areaMm2: number;
}
const LARGEST: ScopeEnd = { text: "6 AWG", areaKcmil: 26.24, areaMm2: 13.3 };
const SMALLEST_ALUMINUM: ScopeEnd = { text: "12 AWG", areaKcmil: 6.53, areaMm2: 3.3 };
const LARGEST_SOLID_ALUMINUM: ScopeEnd = { text: "10 AWG", areaKcmil: 10.38, areaMm2: 5.3 };

/**
 * Is the connector listed at all, and can its listing cover conductors of these sizes?
 *
 * NFPA 70 110.2 and 110.3(B) (2017, 2020, 2023), in our words: what is installed is acceptable only when approved, and
 * a listed product is used as it was listed. UL 486C, scope: splicing connectors for 6 AWG and smaller; aluminum and
 * copper-clad aluminum solid 12 to 10 AWG, stranded 12 to 6 AWG. A range printed beyond that scope has no listing
 * behind it.
 * Worked: 4 AWG copper (41.74 kcmil) in a connector listed to UL 486C alone: 41.74 <= 26.24 does not hold.
 * 250.8(A) and 250.70 allow exothermic welding as such, so a weld without a stated listing is not asked about.
 * Silent: other listings print no limit that is certain enough to refuse by, so only a missing one is asked about; the
 * part's own range is judged by its own rule.
 */
export const listing: Rule = {
  id: ID,
  title: "Listing of the connector",
  clauses: ["approval", "instructions", "splicingConnectors"],
  needs: ["connector/listings", "connector/construction", "joint/conductors/0/size", "joint/conductors/0/stranding"],
  cannotSee: "whether the part in hand bears the mark of its listing",
  check(subject, edition) {
    const { connector, origin } = subject;
    if (connector.listings.length > 0) return judge(subject, edition);
    if (connector.construction === "weld") return notApplicable(ID, "a weld is allowed without a listed part");
    return asking(
      ID,
      new Worksheet(),
      `${origin}/listings`,
      "Whether and to what the connector is listed is not known.",
      {
        cite: edition.clauses.approval,
        required: "a listed connector",
        offered: "no listing stated",
      },
    );
  },
};

function judge(subject: JointSubject, edition: Edition): CheckFinding {
  const { joint, connector, origin } = subject;
  const worksheet = new Worksheet();
  const standards = connector.listings.map(({ standard }) => standard);
  const listed = worksheet.given("listings of the connector", standards, `${origin}/listings`);
  if (!isLimited(connector)) {
    const cite = edition.clauses.instructions;
    const words = listWords(standards);
    worksheet.conclude("the connector is listed", "pass", [listed], "a listing is stated", cite);
    return settled(ID, worksheet, {
      sentence: `The connector is listed to ${words}.`,
      cite,
      required: "a listed connector",
      offered: words,
    });
  }
  let unknown: readonly [group: number, conductor: ConductorGroup] | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    const cover = coverOf(conductor);
    if (cover === "outside") return refuse(worksheet, listed, conductor, group, edition);
    if (cover === "unknown") unknown ??= [group, conductor];
  }
  if (unknown !== undefined) return askStranding(worksheet, ...unknown, edition);
  const cite = edition.clauses.splicingConnectors;
  const covered = joint.conductors.map((conductor, group) => writeCover(worksheet, conductor, group, edition));
  worksheet.conclude(
    "the listing covers the conductors",
    "pass",
    [listed, ...covered],
    "every size lies within it",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: `The connector is listed to ${SPLICING_CONNECTORS}, which covers these conductors.`,
    cite,
    required: REQUIRED,
    offered: SPLICING_CONNECTORS,
  });
}

/** Another listing beside it may reach further, so only the one alone limits. */
function isLimited({ listings }: Connector): boolean {
  return listings.every(({ standard }) => standard === SPLICING_CONNECTORS);
}

/** Whether the scope of the splicing connectors holds the conductor. */
function coverOf(conductor: ConductorGroup): "within" | "outside" | "unknown" {
  const { metal, stranding, strands } = conductor;
  const size = sizeOf(conductor.size);
  if (!isAtMost(size, LARGEST)) return "outside";
  if (metal === "copper") return "within";
  if (isBelow(size, SMALLEST_ALUMINUM)) return "outside";
  if (isAtMost(size, LARGEST_SOLID_ALUMINUM)) return "within";
  if (stranding === "unknown" && strands === undefined) return "unknown";
  return isSolid(conductor) ? "outside" : "within";
}

function isSolid({ stranding, strands }: ConductorGroup): boolean {
  return stranding === "solid" || stranding === "iec-class-1" || (stranding === "unknown" && strands === 1);
}

function isAtMost(size: ConductorSize, end: ScopeEnd): boolean {
  return size.series === "metric" ? areaMm2(size) <= end.areaMm2 : size.areaKcmil <= end.areaKcmil;
}

function isBelow(size: ConductorSize, end: ScopeEnd): boolean {
  return size.series === "metric" ? areaMm2(size) < end.areaMm2 : size.areaKcmil < end.areaKcmil;
}

/** The end of the scope that is nearest to being passed: the smallest size for what lies below it, else the largest. */
function limitFor(conductor: ConductorGroup): ScopeEnd {
  const { metal, size } = conductor;
  if (metal === "copper") return LARGEST;
  if (isBelow(sizeOf(size), SMALLEST_ALUMINUM)) return SMALLEST_ALUMINUM;
  return isSolid(conductor) ? LARGEST_SOLID_ALUMINUM : LARGEST;
}

function writeCover(worksheet: Worksheet, conductor: ConductorGroup, group: number, edition: Edition): Step {
  const cite = edition.clauses.splicingConnectors;
  const head = `joint/conductors/${String(group)}`;
  const size = worksheet.given("conductor size", conductor.size, `${head}/size`);
  const area = areaStep(worksheet, sizeOf(conductor.size), size);
  const limit = limitFor(conductor);
  const facts = [worksheet.given("conductor metal", conductor.metal, `${head}/metal`)];
  if (conductor.metal !== "copper")
    facts.push(
      conductor.stranding === "unknown" && conductor.strands !== undefined
        ? worksheet.given("number of strands", conductor.strands, `${head}/strands`, "strands")
        : worksheet.given("strand form", conductor.stranding, `${head}/stranding`),
    );
  const small = limit === SMALLEST_ALUMINUM;
  const metric = sizeOf(conductor.size).series === "metric";
  const end = worksheet.state(
    `${small ? "smallest" : "largest"} size of the listing, ${limit.text}`,
    metric ? limit.areaMm2 : limit.areaKcmil,
    cite,
    metric ? "mm2" : "kcmil",
    facts,
  );
  worksheet.compare("the size lies within the listing", area, small ? ">=" : "<=", end, cite);
  return worksheet.last;
}

function refuse(
  worksheet: Worksheet,
  listed: Step,
  conductor: ConductorGroup,
  group: number,
  edition: Edition,
): CheckFinding {
  const cite = edition.clauses.splicingConnectors;
  const compared = writeCover(worksheet, conductor, group, edition);
  worksheet.conclude(
    "the listing covers the conductors",
    "fail",
    [listed, compared],
    "it is the connector's only listing, and the size lies outside it",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: `The connector is listed to ${SPLICING_CONNECTORS} only, which ${scopeWords(conductor)}; the conductor is ${conductorWords(conductor)}.`,
    cite,
    required: REQUIRED,
    offered: `${SPLICING_CONNECTORS}, with ${conductorWords(conductor)}`,
    fix: FIX,
  });
}

function scopeWords(conductor: ConductorGroup): string {
  const limit = limitFor(conductor);
  if (limit === SMALLEST_ALUMINUM) return "covers no aluminum below 12 AWG";
  return limit === LARGEST_SOLID_ALUMINUM ? "covers solid aluminum up to 10 AWG" : "covers conductors up to 6 AWG";
}

function askStranding(worksheet: Worksheet, group: number, { size }: ConductorGroup, edition: Edition): CheckFinding {
  const head = `joint/conductors/${String(group)}`;
  worksheet.given("conductor size", size, `${head}/size`);
  return asking(
    ID,
    worksheet,
    `${head}/stranding`,
    "The only listing covers stranded aluminum of this size but not solid; which it is is not known.",
    { cite: edition.clauses.splicingConnectors, required: REQUIRED, offered: SPLICING_CONNECTORS },
  );
}
