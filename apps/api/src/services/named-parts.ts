import type { ConnectorSchedule, Verdict } from "@landfast/rules";
import { cheapestPurchase, commonCurrency, type Money, moneyOf, sumMoney } from "@landfast/stock";
import type { Catalogue } from "./catalogue.js";
import type { Supply } from "./stock-inputs.js";
import { byText } from "./stock-problem.js";

/** One part number of the catalogue that the job's joints name. */
export interface NamedPart {
  readonly partNumber: string;
  readonly joints: number;
  readonly packs: number;
  readonly bought: number;
  /** Cost of what is bought, packs whole; null: no price is known. */
  readonly cost: Money | null;
  readonly marks: readonly string[];
}

/** Joints with the connectors that they name. */
export interface NamedParts {
  readonly partNumbers: number;
  readonly joints: number;
  readonly parts: readonly NamedPart[];
  /** null: some price is not known, or nothing is named. */
  readonly cost: Money | null;
}

/** What the job as it was posted would take: the connectors of the catalogue that its joints name. */
export interface AsNamed {
  readonly all: NamedParts;
  /** Of these, the joints that the rules accept with the connector they name. */
  readonly accepted: NamedParts;
  /** The others, each with its reason. */
  readonly notAccepted: readonly {
    readonly mark: string;
    readonly joints: number;
    readonly partNumber: string;
    readonly verdict: Verdict;
    readonly because: string;
  }[];
}

interface NamedJoint {
  readonly mark: string;
  readonly joints: number;
  readonly partNumber: string;
}

/**
 * What the connectors named by a job's joints come to: each part bought by itself, what is on hand used first, packs
 * whole. null where no joint names a connector of the catalogue.
 */
export function asNamed(
  { rows }: ConnectorSchedule,
  isMeant: (mark: string) => boolean,
  catalogue: Catalogue,
  supply: Supply,
): AsNamed | null {
  const named = rows.flatMap(({ mark, quantity, connector, verdict, deciding }) =>
    connector?.origin === "catalogue" && !connector.chosen && connector.partNumber !== null && isMeant(mark)
      ? [{ mark, joints: quantity, partNumber: connector.partNumber, verdict, because: deciding.sentence }]
      : [],
  );
  if (named.length === 0) return null;
  named.sort((a, b) => byText(a.mark, b.mark));
  const isAccepted = (verdict: Verdict): boolean => verdict === "accept" || verdict === "accept-with-conditions";
  return {
    all: namedParts(named, catalogue, supply),
    accepted: namedParts(
      named.filter(({ verdict }) => isAccepted(verdict)),
      catalogue,
      supply,
    ),
    notAccepted: named.filter(({ verdict }) => !isAccepted(verdict)),
  };
}

function namedParts(named: readonly NamedJoint[], catalogue: Catalogue, supply: Supply): NamedParts {
  const byPart = new Map<string, NamedJoint[]>();
  for (const one of named) byPart.set(one.partNumber, [...(byPart.get(one.partNumber) ?? []), one]);
  const parts = [...byPart]
    .sort(([a], [b]) => byText(a, b))
    .map(([partNumber, members]) => namedPart(partNumber, members, catalogue, supply));
  const costs = parts.flatMap(({ cost }) => cost ?? []);
  const currency = commonCurrency(costs.map((one) => one.currency));
  return {
    partNumbers: parts.length,
    joints: parts.reduce((sum, { joints }) => sum + joints, 0),
    parts,
    cost: currency === null || costs.length < parts.length ? null : sumMoney(costs, currency),
  };
}

function namedPart(
  partNumber: string,
  members: readonly NamedJoint[],
  catalogue: Catalogue,
  supply: Supply,
): NamedPart {
  const item = catalogue.byPartNumber.get(partNumber);
  const joints = members.reduce((sum, one) => sum + one.joints, 0);
  const price = item === undefined ? undefined : supply.priceOf(item);
  const pack = item === undefined ? 1 : supply.packOf(item);
  const wanted = Math.max(0, joints - supply.onHandOf(partNumber));
  const purchase = price === undefined ? null : cheapestPurchase(price, pack, wanted);
  const packs = purchase?.packs ?? Math.ceil(wanted / pack);
  return {
    partNumber,
    joints,
    packs,
    bought: packs * pack,
    cost: purchase === null || price === undefined ? null : moneyOf(purchase.cost, price.currency),
    marks: members.map(({ mark }) => mark).sort(byText),
  };
}
