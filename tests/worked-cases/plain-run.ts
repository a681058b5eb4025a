/** The run most published cases mean: copper THHN, dry, 30 C, three conductors in a raceway, 75 C at both ends. */
import type { ConductorRun, Temperature } from "@landfast/rules";

export function celsius(value: number): Temperature {
  return { value, unit: "Cel" };
}

export function plainRun(change: Partial<ConductorRun> = {}): ConductorRun {
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

/** The same with both ends of one rating. */
export function runEndingAt(value: number, change: Partial<ConductorRun> = {}): ConductorRun {
  return plainRun({ supplyEnd: celsius(value), loadEnd: celsius(value), ...change });
}
