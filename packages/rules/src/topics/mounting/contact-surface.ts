/** Which metal a lug and its pad show each other, as far as their metals and platings are known. */
import type { Connector } from "../../core/connector.js";
import type { PadMetal } from "../../core/joint.js";

/** What may lie on the face that touches. Bronze and brass count as copper. */
export type Surface = "copper" | "aluminum" | "steel" | "tin" | "silver" | "nickel";

export type LugBody = "copper" | "aluminum" | "steel" | "bimetal";
type Plating = "none" | "tin" | "silver" | "nickel";

const BODY_WORDS: ReadonlyMap<string, LugBody> = new Map<string, LugBody>([
  ["copper", "copper"],
  ["copper alloy", "copper"],
  ["bronze", "copper"],
  ["brass", "copper"],
  ["aluminum", "aluminum"],
  ["aluminium", "aluminum"],
  ["aluminum alloy", "aluminum"],
  ["steel", "steel"],
  ["stainless steel", "steel"],
  ["zinc-coated steel", "steel"],
  ["galvanized steel", "steel"],
  ["bimetal", "bimetal"],
  ["bimetallic", "bimetal"],
]);
const PLATING_WORDS: ReadonlyMap<string, Plating> = new Map<string, Plating>([
  ["none", "none"],
  ["bare", "none"],
  ["unplated", "none"],
  ["tin", "tin"],
  ["tin-plated", "tin"],
  ["silver", "silver"],
  ["silver-plated", "silver"],
  ["nickel", "nickel"],
  ["nickel-plated", "nickel"],
]);

/** The metal of the lug's body; undefined where it is not given, or given in a word that is not known here. */
export function lugBody({ bodyMetal }: Connector): LugBody | undefined {
  return bodyMetal === undefined ? undefined : BODY_WORDS.get(bodyMetal.trim().toLowerCase());
}

/** The plating of the lug; undefined where it is not given, or given in a word that is not known here. */
export function lugPlating({ plating }: Connector): Plating | undefined {
  return plating === undefined ? undefined : PLATING_WORDS.get(plating.trim().toLowerCase());
}

const PLATED: readonly Surface[] = ["tin", "silver", "nickel"];
const ANY_BARE: readonly Surface[] = ["copper", "aluminum", "steel"];
const ANY: readonly Surface[] = [...ANY_BARE, ...PLATED];

/** What may lie on the face of the tongue. A bimetal body shows either of its metals. */
export function lugSurfaces(connector: Connector): readonly Surface[] {
  const body = lugBody(connector);
  const bare = body === undefined || body === "bimetal" ? ANY_BARE : [body];
  return surfaces(bare, lugPlating(connector));
}

/** What may lie on the face of the pad. */
export function padSurfaces(pad: PadMetal | undefined): readonly Surface[] {
  return pad === undefined ? ANY : surfaces([pad.metal], pad.plating);
}

function surfaces(bare: readonly Surface[], plating: Plating | undefined): readonly Surface[] {
  if (plating === undefined) return [...bare, ...PLATED];
  return plating === "none" ? bare : [plating];
}

/** Bare aluminum against copper or silver: the pair that eats itself. */
export function attack(one: Surface, other: Surface): boolean {
  return attacksAluminum(one, other) || attacksAluminum(other, one);
}

function attacksAluminum(aluminum: Surface, noble: Surface): boolean {
  return aluminum === "aluminum" && (noble === "copper" || noble === "silver");
}
