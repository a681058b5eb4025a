import type { Citation } from "./citation.js";

/** Where the metric series of conductor sizes stands; from memory, not checked against the document. */
export const METRIC_SERIES_SOURCE: Citation = Object.freeze({
  standard: "IEC 60228",
  edition: "2004",
  locator: "Tables 1 and 2, nominal cross-sectional areas",
});

/** Metric conductor sizes in order of area. They are names of sizes, and none of them equals an AWG or kcmil size. */
export const METRIC_SIZES: readonly string[] = Object.freeze([
  "0.5 mm2",
  "0.75 mm2",
  "1 mm2",
  "1.5 mm2",
  "2.5 mm2",
  "4 mm2",
  "6 mm2",
  "10 mm2",
  "16 mm2",
  "25 mm2",
  "35 mm2",
  "50 mm2",
  "70 mm2",
  "95 mm2",
  "120 mm2",
  "150 mm2",
  "185 mm2",
  "240 mm2",
  "300 mm2",
  "400 mm2",
  "500 mm2",
  "630 mm2",
  "800 mm2",
  "1000 mm2",
]);
