import type { Draft } from "../../oracle/draft.js";
import type { MoreJoint } from "./more-joint.js";

/** 2/0 AWG copper in one opening listed for the forms named, its strands counted. */
function counted(
  { joint, connector }: Draft,
  strands: number,
  listed: Draft["connector"]["openings"][number]["ranges"][number]["strandings"],
  stranding: Draft["joint"]["conductors"][number]["stranding"] = "unknown",
): void {
  for (const group of joint.conductors) {
    group.metal = "copper";
    group.size = "2/0 AWG";
    group.stranding = stranding;
    group.strands = strands;
  }
  for (const opening of connector.openings) opening.ranges = [{ from: "6 AWG", to: "250 kcmil", strandings: listed }];
}

const CLASSES_B = ["class-B", "compressed", "compact"] as const;

export const STRANDING_JOINTS: readonly MoreJoint[] = (
  [
    ["19 strands are counted, and every form of that count is listed", 19, [...CLASSES_B], undefined],
    ["19 strands are counted, and not every form of that count is listed", 19, ["class-B"], undefined],
    ["1330 strands are counted, and class K is not listed", 1330, [...CLASSES_B], undefined],
    ["1330 strands are counted, and class K is listed", 1330, ["class-B", "class-K"], undefined],
    ["3325 strands are counted, and class M is not listed", 3325, ["class-B", "class-K"], undefined],
    ["50 strands are counted, which no class has", 50, ["class-B", "class-K"], undefined],
    ["one strand is counted", 1, ["solid", "class-B"], undefined],
    ["19 strands are counted beside class B", 19, ["class-B"], "class-B"],
    ["1330 strands are counted beside class B", 1330, ["class-B"], "class-B"],
    ["1330 strands are counted beside class M, and neither is listed", 1330, ["class-B"], "class-M"],
  ] as const
).map(([name, strands, listed, stranding]) => ({
  rule: "strand-class",
  name,
  from: 0,
  change: (draft) => {
    counted(draft, strands, [...listed], stranding);
  },
}));
