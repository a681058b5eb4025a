import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Basis, Joint } from "../../core/joint.js";
import { jointUnder } from "../joint/check-joint.js";
import { judgeOf } from "./catalogue-judge.js";
import { jointClass, withoutOffer } from "./joint-class.js";
import { rankingOf } from "./rank.js";
import { candidateOf } from "./select-connectors.js";
import type { Candidate, Selection } from "./selection.js";

/** Equal joints, and what a catalogue offers for each of them. */
export interface ClassCandidates {
  /** The same text for joints that are equal in everything the rules look at, and for no others. */
  readonly kind: string;
  /** The basis in force for them. */
  readonly basis: Basis;
  /** Places in the list of joints, ascending. */
  readonly joints: readonly number[];
  /** Every connector that every rule accepts, by rank; empty: nothing fits. */
  readonly candidates: readonly Candidate[];
  /** How many connectors each rule keeps out (by its first failure, else its first question), most first. */
  readonly excluded: Selection["excluded"];
}

/** Sorts joints into classes and judges the catalogue once for each. The connector a joint names is set aside. */
export function candidatesByClass(
  joints: readonly Joint[],
  basisOfAll: Basis,
  catalogue: readonly CatalogueItem[],
  editionOf: (basis: Basis) => Edition,
): ClassCandidates[] {
  const classes = new Map<string, { readonly joint: Joint; readonly basis: Basis; readonly places: number[] }>();
  joints.forEach((joint, place) => {
    const asked = withoutOffer(joint);
    const basis = joint.basis ?? basisOfAll;
    const kind = jointClass(asked, basis);
    const known = classes.get(kind);
    if (known === undefined) classes.set(kind, { joint: asked, basis, places: [place] });
    else known.places.push(place);
  });
  const { compare } = rankingOf({});
  return [...classes].map(([kind, { joint, basis, places }]): ClassCandidates => {
    const { accepted, excluded } = judgeOf(catalogue, editionOf(basis)).survey(jointUnder(joint, basis));
    const candidates = [...accepted].sort(compare).map(candidateOf);
    return { kind, basis, joints: places, candidates, excluded };
  });
}
