/** The editions this library answers for. */
import type { Edition } from "../core/edition.js";
import type { Basis } from "../core/joint.js";
import { nfpa70Edition2017 } from "./nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "./nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "./nfpa70-2023/edition.js";

export const EDITIONS: readonly Edition[] = Object.freeze([nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023]);

/** The edition a basis names. @throws RangeError naming the editions that are answered. */
export function editionOf(basis: Basis): Edition {
  const named = nameOf(basis);
  const edition = EDITIONS.find((one) => nameOf(one) === named);
  if (edition === undefined)
    throw new RangeError(`no rules for ${named}; answered are ${EDITIONS.map(nameOf).join(", ")}`);
  return edition;
}

function nameOf({ ruleSet, edition }: Pick<Basis, "ruleSet" | "edition">): string {
  return `${ruleSet} ${edition}`;
}
