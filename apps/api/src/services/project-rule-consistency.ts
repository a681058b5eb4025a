import { celsius, LOWEST_CAP_C, type ProjectRule } from "@landfast/rules";
import { type Fault, pointerTo } from "../problems/problem.js";

/** What in the rules of a project cannot be kept, though each has the right form. */
export function projectRuleFaults(rules: readonly ProjectRule[] | undefined): readonly Fault[] {
  const faults: Fault[] = [];
  const ids = new Set<string>();
  for (const [index, { id, demand }] of (rules ?? []).entries()) {
    const pointer = pointerTo("/projectRules", index);
    if (ids.has(id))
      faults.push({
        pointer: pointerTo(pointer, "id"),
        detail: `the id "${id}" is that of an earlier rule already`,
        accepted: "an id that no other rule of the project has",
      });
    ids.add(id);
    if (demand.kind === "cap-terminal-temperature" && !(celsius(demand.temperature) >= LOWEST_CAP_C))
      faults.push({
        pointer: pointerTo(pointer, "demand", "temperature"),
        detail: "the ampacity tables have no column as low as this",
        accepted: `${LOWEST_CAP_C} Cel or more`,
      });
  }
  return faults;
}
