import { EDITIONS, type Edition } from "@landfast/rules";

export interface EditionPair {
  readonly name: string;
  readonly from: Edition;
  readonly to: Edition;
}

const named = (wanted: string): Edition => {
  const found = EDITIONS.find(({ edition }) => edition === wanted);
  if (found === undefined) throw new Error(`no edition ${wanted}`);
  return found;
};

export const EDITION_PAIRS: readonly EditionPair[] = [
  ["2017", "2020"],
  ["2020", "2023"],
  ["2017", "2023"],
].map(([from = "", to = ""]) => ({ name: `${from} -> ${to}`, from: named(from), to: named(to) }));
