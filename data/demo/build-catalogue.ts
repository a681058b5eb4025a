import type { CatalogueItem } from "@landfast/rules";
import { electrodeClamps, exothermicWelds, groundBarLugs, neutralAndGroundBars } from "./families/grounding-parts.js";
import {
  distributionBlocks,
  inLineSplices,
  intermixSplices,
  multiTapBlocks,
  sealedSplices,
  splicerReducers,
  springSplices,
  twistOnSplices,
} from "./families/insulated-splices.js";
import {
  compressionLugs,
  compressionSleeves,
  compressionTaps,
  lugPairs,
  pinAdapters,
} from "./families/pressed-parts.js";
import { lugKits, multiBarrelLugs, setScrewLugs } from "./families/set-screw-lugs.js";
import { gutterTaps, parallelTaps, piercingTaps, splitBolts } from "./families/taps.js";

/** The invented catalogue: name, revision and items, as data/demo/catalogue.json holds it. */
export function buildCatalogue(): {
  name: string;
  revision: string;
  status: "invented";
  items: CatalogueItem[];
} {
  return {
    name: "Landfast demonstration catalogue: every part, number, price and hour in it is invented",
    revision: "1",
    status: "invented",
    items: [
      ...setScrewLugs(),
      ...multiBarrelLugs(),
      ...lugKits(),
      ...inLineSplices(),
      ...splicerReducers(),
      ...multiTapBlocks(),
      ...distributionBlocks(),
      ...piercingTaps(),
      ...gutterTaps(),
      ...parallelTaps(),
      ...splitBolts(),
      ...compressionLugs(),
      ...lugPairs(),
      ...compressionSleeves(),
      ...compressionTaps(),
      ...pinAdapters(),
      ...twistOnSplices(),
      ...springSplices(),
      ...sealedSplices(),
      ...intermixSplices(),
      ...neutralAndGroundBars(),
      ...groundBarLugs(),
      ...electrodeClamps(),
      ...exothermicWelds(),
    ],
  };
}
