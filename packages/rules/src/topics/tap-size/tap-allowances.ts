import {
  LONG_TAP_DIVISOR,
  LONG_TAP_UP_TO_FT,
  SHORT_TAP_DIVISOR,
  SHORT_TAP_UP_TO_FT,
} from "../../core/tap-allowance.js";

/** The ways in which a conductor may be protected at its end only, or by the device of a transformer's primary. */
export const TAP_ALLOWANCES = [
  "feeder-tap-to-10-ft",
  "feeder-tap-to-25-ft",
  "primary-of-tapped-transformer",
  "secondary-of-tapped-transformer",
  "feeder-tap-in-high-bay",
  "feeder-tap-outdoors",
  "secondary-protected-by-primary",
  "secondary-to-10-ft",
  "industrial-secondary-to-25-ft",
  "secondary-outdoors",
  "secondary-to-25-ft",
] as const;
export type TapAllowance = (typeof TAP_ALLOWANCES)[number];

/** What must be so on site for an allowance to hold. */
export const TAP_CONDITIONS = [
  "in-raceway",
  "ends-at-equipment",
  "ends-in-one-device",
  "both-sides-protected",
  "manufacturing-building",
  "qualified-persons",
  "unspliced",
  "through-no-walls",
  "outdoors-to-its-end",
  "device-at-disconnect",
  "industrial",
  "devices-grouped",
  "primary-sized-for-transformer",
] as const;
export type TapCondition = (typeof TAP_CONDITIONS)[number];

export const CONDITION_WORDS: Readonly<Record<TapCondition, string>> = {
  "in-raceway": "it runs in a raceway from where it begins to the enclosure in which it ends",
  "ends-at-equipment": "it goes no further than the equipment that it supplies",
  "ends-in-one-device": "it ends in one circuit breaker or one set of fuses that limits the load to its ampacity",
  "both-sides-protected": "the conductors of primary and secondary are both protected from damage",
  "manufacturing-building": "the building is for manufacturing",
  "qualified-persons": "only qualified persons maintain and supervise it",
  unspliced: "it has no splices",
  "through-no-walls": "it goes through no wall, floor or ceiling",
  "outdoors-to-its-end": "it stays outdoors except where it ends",
  "device-at-disconnect":
    "its device is part of a disconnecting means, or beside it, readily accessible outdoors or nearest where it comes in",
  industrial: "it is an industrial installation",
  "devices-grouped": "all devices in which it ends are grouped",
  "primary-sized-for-transformer": "the primary has a device that protects the transformer by 450.3",
};

/** What one allowance asks for. */
export interface AllowanceTerms {
  readonly clause:
    | "tapTo10ft"
    | "tapTo25ft"
    | "tapToTransformer"
    | "tapInHighBay"
    | "tapOutdoors"
    | "secondaryByPrimary"
    | "secondaryTo10ft"
    | "secondaryIndustrial"
    | "secondaryOutdoors"
    | "secondaryTo25ft";
  readonly upToFt?: number;
  /** The device ahead is divided by this; absent: no share of it is asked for. */
  readonly divisor?: number;
  /** The share is asked for only of conductors that leave the enclosure where they begin. */
  readonly shareOutsideOnly: boolean;
  /** The conductor is on the secondary side, so the device ahead counts times primary over secondary voltage. */
  readonly throughTransformer: boolean;
  /** "together": the ratings of all devices at the end, added up. "none": the device of the primary protects it. */
  readonly endDevice: "one" | "together" | "none";
  /** Only secondaries of two wires, or of three from delta to delta, are protected through the transformer. */
  readonly windingsDecide: boolean;
  /** It also carries the rated current of the transformer's secondary. */
  readonly carriesTransformer: boolean;
  readonly conditions: readonly TapCondition[];
}

const LONG_TAP_IN_HIGH_BAY_FT = 100;
const TO_10_FT: readonly TapCondition[] = ["in-raceway", "ends-at-equipment"];
const ONE_DEVICE: readonly TapCondition[] = ["ends-in-one-device"];
const TRANSFORMER: readonly TapCondition[] = ["both-sides-protected", "ends-in-one-device"];
const OUTDOORS: readonly TapCondition[] = ["ends-in-one-device", "outdoors-to-its-end", "device-at-disconnect"];

const FEEDER_TAP = {
  shareOutsideOnly: false,
  throughTransformer: false,
  endDevice: "one",
  windingsDecide: false,
  carriesTransformer: false,
} as const;
const SECONDARY = { ...FEEDER_TAP, throughTransformer: true } as const;

export const TERMS: Readonly<Record<TapAllowance, AllowanceTerms>> = {
  "feeder-tap-to-10-ft": {
    ...FEEDER_TAP,
    clause: "tapTo10ft",
    upToFt: SHORT_TAP_UP_TO_FT,
    divisor: SHORT_TAP_DIVISOR,
    shareOutsideOnly: true,
    conditions: TO_10_FT,
  },
  "feeder-tap-to-25-ft": {
    ...FEEDER_TAP,
    clause: "tapTo25ft",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    conditions: ONE_DEVICE,
  },
  "primary-of-tapped-transformer": {
    ...FEEDER_TAP,
    clause: "tapToTransformer",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    conditions: TRANSFORMER,
  },
  "secondary-of-tapped-transformer": {
    ...SECONDARY,
    clause: "tapToTransformer",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    conditions: TRANSFORMER,
  },
  "feeder-tap-in-high-bay": {
    ...FEEDER_TAP,
    clause: "tapInHighBay",
    upToFt: LONG_TAP_IN_HIGH_BAY_FT,
    divisor: LONG_TAP_DIVISOR,
    conditions: ["ends-in-one-device", "manufacturing-building", "qualified-persons", "unspliced", "through-no-walls"],
  },
  "feeder-tap-outdoors": { ...FEEDER_TAP, clause: "tapOutdoors", conditions: OUTDOORS },
  "secondary-protected-by-primary": {
    ...SECONDARY,
    clause: "secondaryByPrimary",
    divisor: 1,
    endDevice: "none",
    windingsDecide: true,
    conditions: ["primary-sized-for-transformer"],
  },
  "secondary-to-10-ft": {
    ...SECONDARY,
    clause: "secondaryTo10ft",
    upToFt: SHORT_TAP_UP_TO_FT,
    divisor: SHORT_TAP_DIVISOR,
    shareOutsideOnly: true,
    conditions: TO_10_FT,
  },
  "industrial-secondary-to-25-ft": {
    ...SECONDARY,
    clause: "secondaryIndustrial",
    upToFt: LONG_TAP_UP_TO_FT,
    endDevice: "together",
    carriesTransformer: true,
    conditions: ["industrial", "qualified-persons", "devices-grouped"],
  },
  "secondary-outdoors": { ...SECONDARY, clause: "secondaryOutdoors", conditions: OUTDOORS },
  "secondary-to-25-ft": {
    ...SECONDARY,
    clause: "secondaryTo25ft",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    conditions: ONE_DEVICE,
  },
};
