/** A run of conductors made up for tests: copper THHN in a dry raceway at 30 C, three conductors, 75 C at both ends. */
import type { ConductorRun } from "../core/conductor-run.js";
import type { Temperature } from "../core/quantity.js";

export function celsius(value: number): Temperature {
  return { value, unit: "Cel" };
}

export function sampleRun(change: Partial<ConductorRun> = {}): ConductorRun {
  return {
    metal: "copper",
    insulation: "THHN",
    place: "dry",
    sets: 1,
    manner: "raceway",
    ambient: celsius(30),
    sunlitRoof: "none",
    grouping: { in: "raceway", conductors: 3 },
    supplyEnd: celsius(75),
    loadEnd: celsius(75),
    ...change,
  };
}

/** The same without some of its facts. */
export function sampleRunWithout(
  missing: readonly (keyof ConductorRun)[],
  change: Partial<ConductorRun> = {},
): ConductorRun {
  const run: Partial<Record<keyof ConductorRun, unknown>> = { ...sampleRun(change) };
  for (const fact of missing) Reflect.deleteProperty(run, fact);
  return run as ConductorRun;
}
