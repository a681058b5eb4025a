import type { ConnectorFamily } from "@landfast/rules";
import type { PartKind } from "./spare-policy.js";

/**
 * What each family counts as when spares are reckoned. Pressed parts are spoiled by one bad crimp; reducers and pins are
 * bought to the job; a piercing tap's head shears off as it is tightened.
 */
const KINDS: Readonly<Record<ConnectorFamily, PartKind>> = {
  "set-screw-lug-one-hole": "mechanical",
  "set-screw-lug-two-hole": "mechanical",
  "multi-barrel-lug": "mechanical",
  "lug-kit": "lug-kit",
  "in-line-splice": "mechanical",
  "splicer-reducer": "reducer",
  "multi-tap-block": "mechanical",
  "power-distribution-block": "mechanical",
  "piercing-tap": "shear-head-tap",
  "gutter-tap": "mechanical",
  "parallel-tap": "mechanical",
  "split-bolt": "mechanical",
  "split-bolt-with-spacer": "mechanical",
  "compression-lug-one-hole": "compression",
  "compression-lug-two-hole": "compression",
  "compression-lug-pair": "compression",
  "compression-sleeve": "compression",
  "compression-tap": "compression",
  "pin-adapter": "reducer",
  "twist-on": "twist-on",
  "lever-splice": "small-splice",
  "spring-clamp-splice": "small-splice",
  "sealed-splice": "mechanical",
  "sealed-multi-tap": "mechanical",
  "direct-burial-splice": "mechanical",
  "intermix-splice": "small-splice",
  "neutral-bar": "mechanical",
  "ground-bar": "mechanical",
  "ground-bar-lug": "mechanical",
  "rod-clamp": "mechanical",
  "pipe-clamp": "mechanical",
  "rebar-clamp": "mechanical",
  "exothermic-weld": "other",
  "equipment-terminal": "other",
  "wiring-device-terminal": "other",
};

/** What a family counts as when spares are reckoned. */
export function partKindOf(family: ConnectorFamily): PartKind {
  return KINDS[family];
}
