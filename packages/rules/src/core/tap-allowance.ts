/**
 * The allowances for conductors that are protected at their end only.
 *
 * NFPA 70 240.21(B), (C) (2017, 2020, 2023), in our words: taps to a feeder up to 10 ft reach a tenth of the feeder's
 * device where they leave the enclosure, up to 25 ft a third, and so do taps in high bays and taps that supply a
 * transformer; taps outdoors need no share. Secondary conductors of a transformer the same, with the primary's device
 * multiplied by the ratio of the voltages; outdoors no share, in industrial installations the transformer's own secondary
 * current, and behind two-wire and delta-delta transformers the primary's whole device. The next standard rating of 240.4(B) is never made use of.
 */
export const SHORT_TAP_UP_TO_FT = 10;
export const LONG_TAP_UP_TO_FT = 25;
/** The feeder's device is divided by this for the least ampacity of a short tap, and of a long one. */
export const SHORT_TAP_DIVISOR = 10;
export const LONG_TAP_DIVISOR = 3;
