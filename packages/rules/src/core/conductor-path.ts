import type { ConductorGroup } from "./conductor.js";

/** A fact of a conductor group that a rule may read or ask for. */
export type ConductorFact = keyof ConductorGroup;

/**
 * Where a fact of a conductor group stands: conductorPath(0, "size") is "joint/conductors/0/size". Put together once for
 * each fact, because every rule that looks at a conductor names some.
 * @param group index into joint.conductors.
 */
export function conductorPath(group: number, fact: ConductorFact): string {
  return pathsOf(group)[fact] ?? `joint/conductors/${String(group)}/${fact}`;
}

const FACTS: readonly ConductorFact[] = [
  "count",
  "size",
  "metal",
  "stranding",
  "strands",
  "insulation",
  "duty",
  "uncut",
];
const NONE: Readonly<Partial<Record<ConductorFact, string>>> = {};
/** More groups than this meet in no joint of a real job. */
const KEPT = 64;

const paths = Array.from(
  { length: KEPT },
  (_, group): Readonly<Partial<Record<ConductorFact, string>>> =>
    Object.fromEntries(FACTS.map((fact) => [fact, `joint/conductors/${String(group)}/${fact}`])),
);

function pathsOf(group: number): Readonly<Partial<Record<ConductorFact, string>>> {
  return paths[group] ?? NONE;
}
