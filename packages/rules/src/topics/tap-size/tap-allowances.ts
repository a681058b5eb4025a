import {
  LONG_TAP_DIVISOR,
  LONG_TAP_UP_TO_FT,
  SHORT_TAP_DIVISOR,
  SHORT_TAP_UP_TO_FT,
} from "../../core/tap-allowance.js";

/** The ways in which a conductor may be protected at its end only. */
export const TAP_ALLOWANCES = [
  "feeder-tap-to-10-ft",
  "feeder-tap-to-25-ft",
  "primary-of-tapped-transformer",
  "secondary-of-tapped-transformer",
  "feeder-tap-in-high-bay",
  "feeder-tap-outdoors",
  "secondary-to-10-ft",
  "secondary-to-25-ft",
] as const;
export type TapAllowance = (typeof TAP_ALLOWANCES)[number];

/** What one allowance asks for. */
export interface AllowanceTerms {
  readonly clause:
    | "tapTo10ft"
    | "tapTo25ft"
    | "tapToTransformer"
    | "tapInHighBay"
    | "tapOutdoors"
    | "secondaryTo10ft"
    | "secondaryTo25ft";
  readonly upToFt?: number;
  /** The device ahead is divided by this; absent: no share of it is asked for. */
  readonly divisor?: number;
  /** The share is asked for only of conductors that leave the enclosure where they begin. */
  readonly shareOutsideOnly: boolean;
  /** The conductor is on the secondary side, so the device ahead counts times primary over secondary voltage. */
  readonly throughTransformer: boolean;
  /** What must be seen on site for the allowance to hold. */
  readonly onSite: string;
}

const LONG_TAP_IN_HIGH_BAY_FT = 100;
const IN_ONE_DEVICE =
  "It ends in one circuit breaker or one set of fuses that limits the load to its ampacity, and is in a raceway or otherwise protected from damage.";

export const TERMS: Readonly<Record<TapAllowance, AllowanceTerms>> = {
  "feeder-tap-to-10-ft": {
    clause: "tapTo10ft",
    upToFt: SHORT_TAP_UP_TO_FT,
    divisor: SHORT_TAP_DIVISOR,
    shareOutsideOnly: true,
    throughTransformer: false,
    onSite: "It runs in a raceway and no further than the equipment it supplies.",
  },
  "feeder-tap-to-25-ft": {
    clause: "tapTo25ft",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    shareOutsideOnly: false,
    throughTransformer: false,
    onSite: IN_ONE_DEVICE,
  },
  "primary-of-tapped-transformer": {
    clause: "tapToTransformer",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    shareOutsideOnly: false,
    throughTransformer: false,
    onSite:
      "Primary and secondary conductors are both protected from damage, and the secondary ones end in one device.",
  },
  "secondary-of-tapped-transformer": {
    clause: "tapToTransformer",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    shareOutsideOnly: false,
    throughTransformer: true,
    onSite:
      "Primary and secondary conductors are both protected from damage, and the secondary ones end in one device.",
  },
  "feeder-tap-in-high-bay": {
    clause: "tapInHighBay",
    upToFt: LONG_TAP_IN_HIGH_BAY_FT,
    divisor: LONG_TAP_DIVISOR,
    shareOutsideOnly: false,
    throughTransformer: false,
    onSite: `${IN_ONE_DEVICE} It has no splices, goes through no wall, floor or ceiling, and only qualified persons serve the building, a manufacturing one.`,
  },
  "feeder-tap-outdoors": {
    clause: "tapOutdoors",
    shareOutsideOnly: false,
    throughTransformer: false,
    onSite: `${IN_ONE_DEVICE} It stays outdoors except where it ends, at a readily accessible disconnecting means.`,
  },
  "secondary-to-10-ft": {
    clause: "secondaryTo10ft",
    upToFt: SHORT_TAP_UP_TO_FT,
    divisor: SHORT_TAP_DIVISOR,
    shareOutsideOnly: true,
    throughTransformer: true,
    onSite: "It runs in a raceway and no further than the equipment it supplies.",
  },
  "secondary-to-25-ft": {
    clause: "secondaryTo25ft",
    upToFt: LONG_TAP_UP_TO_FT,
    divisor: LONG_TAP_DIVISOR,
    shareOutsideOnly: false,
    throughTransformer: true,
    onSite: IN_ONE_DEVICE,
  },
};
