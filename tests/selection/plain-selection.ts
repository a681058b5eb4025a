import {
  type Basis,
  type CatalogueItem,
  type CheckFinding,
  checkJoint,
  compareExact,
  exactOf,
  type Joint,
  type JointFinding,
  type Selection,
  sizeOf,
} from "@landfast/rules";

/** What a selection must be, worked out the long way: the full check of every connector, and nothing remembered. */
export function plainSelection(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
): { readonly selection: Selection; readonly finding: JointFinding | null } {
  const checked = catalogue.map((item) => ({
    item,
    finding: checkJoint({ joint, basis, connector: item, origin: "catalogue" }),
  }));
  const accepted = checked.filter(({ finding }) => isAccepted(finding)).sort(byRank);
  const excluded = countsOf(checked.filter(({ finding }) => !isAccepted(finding)));
  const [best, ...others] = accepted;
  if (best !== undefined)
    return {
      selection: {
        chosen: candidateOf(best),
        runnersUp: others.slice(0, 3).map(candidateOf),
        excluded,
        nearestMisses: [],
        because: reasonFor(best, others),
      },
      finding: best.finding,
    };
  const misses = checked.filter(({ item }) => item.functions.includes(joint.function)).sort(byNearness);
  return { selection: nothing(misses, excluded), finding: misses[0]?.finding ?? null };
}

interface Checked {
  readonly item: CatalogueItem;
  readonly finding: JointFinding;
}

const isAccepted = ({ verdict }: JointFinding): boolean => verdict === "accept" || verdict === "accept-with-conditions";
const failuresOf = ({ findings }: JointFinding): readonly CheckFinding[] =>
  findings.filter(({ outcome }) => outcome === "fail");
const questionsOf = ({ findings }: JointFinding): number =>
  findings.filter(({ outcome }) => outcome === "missing").length;
const conditionsOf = ({ findings }: JointFinding): number =>
  findings.reduce((sum, { conditions }) => sum + conditions.length, 0);
const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const largestSize = ({ openings }: CatalogueItem): number =>
  Math.max(0, ...openings.flatMap(({ ranges }) => ranges.map(({ to }) => sizeOf(to).areaKcmil)));

function byPrice({ price: a }: CatalogueItem, { price: b }: CatalogueItem): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return byText(a.currency, b.currency) || compareExact(exactOf(a.amount), exactOf(b.amount));
}

function byHours({ labourHours: a }: CatalogueItem, { labourHours: b }: CatalogueItem): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a - b;
}

function byRank(a: Checked, b: Checked): number {
  return (
    Number(a.finding.verdict !== "accept") - Number(b.finding.verdict !== "accept") ||
    conditionsOf(a.finding) - conditionsOf(b.finding) ||
    byPrice(a.item, b.item) ||
    byHours(a.item, b.item) ||
    largestSize(a.item) - largestSize(b.item) ||
    byText(a.item.partNumber, b.item.partNumber)
  );
}

function byNearness(a: Checked, b: Checked): number {
  return (
    failuresOf(a.finding).length - failuresOf(b.finding).length ||
    questionsOf(a.finding) - questionsOf(b.finding) ||
    byRank(a, b)
  );
}

function countsOf(refused: readonly Checked[]): Selection["excluded"] {
  const counts = new Map<string, number>();
  for (const { finding } of refused) counts.set(finding.deciding.rule, (counts.get(finding.deciding.rule) ?? 0) + 1);
  return [...counts]
    .map(([rule, connectors]) => ({ rule, connectors }))
    .sort((a, b) => b.connectors - a.connectors || byText(a.rule, b.rule));
}

function candidateOf({ item, finding }: Checked): Selection["runnersUp"][number] {
  const { partNumber, description, price, labourHours } = item;
  return {
    partNumber,
    description,
    verdict: finding.verdict,
    conditions: conditionsOf(finding),
    price: price ?? null,
    labourHours: labourHours ?? null,
  };
}

function reasonFor(best: Checked, others: readonly Checked[]): string {
  const [next] = others;
  if (next === undefined) return "It is the only connector of the catalogue that every rule accepts.";
  const lines: readonly [boolean, string][] = [
    [best.finding.verdict !== next.finding.verdict, "it is accepted without conditions"],
    [conditionsOf(best.finding) !== conditionsOf(next.finding), "its acceptance hangs on fewer conditions"],
    [byPrice(best.item, next.item) !== 0, "it costs least"],
    [byHours(best.item, next.item) !== 0, "it takes the least labor"],
    [largestSize(best.item) !== largestSize(next.item), "its range is nearest to the conductor"],
  ];
  const why = lines.find(([decides]) => decides)?.[1] ?? "its part number comes first among equals";
  return `Of ${String(others.length + 1)} connectors that every rule accepts, ${why}.`;
}

function nothing(misses: readonly Checked[], excluded: Selection["excluded"]): Selection {
  const empty = { chosen: null, runnersUp: [], excluded };
  const [nearest] = misses;
  if (nearest === undefined)
    return { ...empty, nearestMisses: [], because: "The catalogue holds no connector for this kind of joint." };
  const failure = ({ finding }: Checked, rule: string | undefined): CheckFinding | undefined =>
    failuresOf(finding).find((one) => one.rule === rule);
  const isJointsOwn = ({ steps }: CheckFinding): boolean =>
    steps.every((step) => step.kind !== "given" || !step.origin.startsWith("connector/"));
  const shared = failuresOf(nearest.finding).filter(({ rule }) => misses.every((miss) => failure(miss, rule)));
  const common = (shared.find(isJointsOwn) ?? shared[0])?.rule;
  const named = (miss: Checked): CheckFinding => {
    const { findings, deciding } = miss.finding;
    const decided = failure(miss, common) ?? findings.find(({ rule }) => rule === deciding.rule);
    if (decided === undefined) throw new Error(`${deciding.rule} is not among the findings`);
    return decided;
  };
  const { sentence, fix } = named(nearest);
  const because =
    nearest.finding.verdict === "needs-information"
      ? `A fact is missing that decides whether any connector fits: ${sentence}`
      : common === undefined
        ? `No connector of the catalogue fits; the nearest, ${nearest.item.partNumber}, fails: ${sentence}`
        : `${misses.every((miss) => isJointsOwn(named(miss))) ? "No connector can help" : "No connector of the catalogue can help"}: ${sentence} To put it right: ${fix}.`;
  return {
    ...empty,
    nearestMisses: misses.slice(0, 3).map((miss) => {
      const one = named(miss);
      return {
        partNumber: miss.item.partNumber,
        description: miss.item.description,
        rule: one.rule,
        sentence: one.sentence,
        fix: one.missing[0] === undefined ? one.fix : `say what is not known: ${one.missing[0].path}`,
      };
    }),
    because,
  };
}
