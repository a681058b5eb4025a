/** Conductors protected at their end only. */
import { TAP_CONDITIONS, type TapQuestion } from "@landfast/rules";
import { plainRun } from "../worked-cases/plain-run.js";
import { answer } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

/** 3 AWG copper, 100 A at 75 C, with everything met that an allowance asks for. */
function allowed(change: Partial<TapQuestion>, edition: EditionName): string {
  return answer(
    "tap",
    {
      ask: "check",
      allowance: "feeder-tap-to-10-ft",
      deviceAheadA: 200,
      endDeviceA: 100,
      continuousLoadA: 0,
      nonContinuousLoadA: 50,
      length: { value: 8, unit: "ft" },
      physicallyProtected: true,
      leavesEnclosure: true,
      primaryV: 480,
      secondaryV: 480,
      windings: "delta-delta",
      transformerSecondaryA: 90,
      highBay: {
        wallHeight: { value: 40, unit: "ft" },
        horizontalLength: { value: 20, unit: "ft" },
        tapAboveFloor: { value: 32, unit: "ft" },
      },
      conditionsMet: TAP_CONDITIONS,
      size: "3 AWG",
      run: plainRun(),
      ...change,
    },
    edition,
  );
}

const inBay = (change: Partial<NonNullable<TapQuestion["highBay"]>>, edition: EditionName): string =>
  allowed(
    {
      allowance: "feeder-tap-in-high-bay",
      highBay: {
        wallHeight: { value: 40, unit: "ft" },
        horizontalLength: { value: 20, unit: "ft" },
        tapAboveFloor: { value: 32, unit: "ft" },
        ...change,
      },
    },
    edition,
  );

export const TAP_THRESHOLDS: readonly Threshold[] = [
  ...(
    [
      ["feeder-tap-to-10-ft", 10, "240.21(B)(1)", "core/tap-allowance.ts SHORT_TAP_UP_TO_FT"],
      ["secondary-to-10-ft", 10, "240.21(C)(2)", "core/tap-allowance.ts SHORT_TAP_UP_TO_FT"],
      ["feeder-tap-to-25-ft", 25, "240.21(B)(2)", "core/tap-allowance.ts LONG_TAP_UP_TO_FT"],
      ["primary-of-tapped-transformer", 25, "240.21(B)(3)", "core/tap-allowance.ts LONG_TAP_UP_TO_FT"],
      ["secondary-of-tapped-transformer", 25, "240.21(B)(3)", "core/tap-allowance.ts LONG_TAP_UP_TO_FT"],
      ["industrial-secondary-to-25-ft", 25, "240.21(C)(3)", "core/tap-allowance.ts LONG_TAP_UP_TO_FT"],
      ["secondary-to-25-ft", 25, "240.21(C)(6)", "core/tap-allowance.ts LONG_TAP_UP_TO_FT"],
      ["feeder-tap-in-high-bay", 100, "240.21(B)(4)", "topics/tap-size/tap-allowances.ts LONG_TAP_IN_HIGH_BAY_FT"],
    ] as const
  ).map(([allowance, limit, clause, where]) =>
    overNumbers({
      name: `longest conductor of ${allowance}`,
      where: [where],
      kind: "published",
      source: `NFPA 70 ${clause}: ${String(limit)} ft`,
      unit: "ft",
      step: 0.01,
      values: [limit - 0.01, limit, limit + 0.01],
      answers: ["true", "true", "false"],
      ask: (value, edition) => allowed({ allowance, length: { value, unit: "ft" } }, edition),
    }),
  ),
  ...(
    [
      ["feeder-tap-to-10-ft", 10, "240.21(B)(1)", "core/tap-allowance.ts SHORT_TAP_DIVISOR"],
      ["secondary-to-10-ft", 10, "240.21(C)(2)", "core/tap-allowance.ts SHORT_TAP_DIVISOR"],
      ["feeder-tap-to-25-ft", 3, "240.21(B)(2)", "core/tap-allowance.ts LONG_TAP_DIVISOR"],
      ["primary-of-tapped-transformer", 3, "240.21(B)(3)", "core/tap-allowance.ts LONG_TAP_DIVISOR"],
      ["secondary-of-tapped-transformer", 3, "240.21(B)(3)", "core/tap-allowance.ts LONG_TAP_DIVISOR"],
      ["feeder-tap-in-high-bay", 3, "240.21(B)(4)", "core/tap-allowance.ts LONG_TAP_DIVISOR"],
      ["secondary-to-25-ft", 3, "240.21(C)(6)", "core/tap-allowance.ts LONG_TAP_DIVISOR"],
      [
        "secondary-protected-by-primary",
        1,
        "240.21(C)(1)",
        "topics/tap-size/tap-allowances.ts TERMS.secondary-protected-by-primary.divisor",
      ],
    ] as const
  ).map(([allowance, times, clause, where]) =>
    overNumbers({
      name: `device ahead of ${allowance}`,
      where: [where],
      kind: "published",
      source: `NFPA 70 ${clause}: 3 AWG carries 100 A; ${String(100 * times)} / ${String(times)} = 100`,
      unit: "A",
      step: 1,
      values: [100 * times - 1, 100 * times, 100 * times + 1],
      answers: ["true", "true", "false"],
      ask: (deviceAheadA, edition) => allowed({ allowance, deviceAheadA }, edition),
    }),
  ),
  overNumbers({
    name: "walls that make a high bay",
    where: ["topics/tap-size/tap.ts HIGH_BAY_WALLS_OVER_FT"],
    kind: "published",
    source: "NFPA 70 240.21(B)(4): over 35 ft high at walls",
    unit: "ft",
    step: 0.1,
    values: [34.9, 35, 35.1],
    answers: ["false", "false", "true"],
    ask: (value, edition) => inBay({ wallHeight: { value, unit: "ft" } }, edition),
  }),
  overNumbers({
    name: "horizontal length of a tap in a high bay",
    where: ["topics/tap-size/tap.ts HIGH_BAY_HORIZONTAL_UP_TO_FT"],
    kind: "published",
    source: "NFPA 70 240.21(B)(4)(2): not over 25 ft horizontally",
    unit: "ft",
    step: 0.1,
    values: [24.9, 25, 25.1],
    answers: ["true", "true", "false"],
    ask: (value, edition) => inBay({ horizontalLength: { value, unit: "ft" } }, edition),
  }),
  overNumbers({
    name: "height of a tap in a high bay",
    where: ["topics/tap-size/tap.ts HIGH_BAY_TAP_FROM_FT"],
    kind: "published",
    source: "NFPA 70 240.21(B)(4)(9): not less than 30 ft from the floor",
    unit: "ft",
    step: 0.1,
    values: [29.9, 30, 30.1],
    answers: ["false", "true", "true"],
    ask: (value, edition) => inBay({ tapAboveFloor: { value, unit: "ft" } }, edition),
  }),
  ...(
    [
      ["copper", ["8 AWG", "6 AWG", "4 AWG"], "6 AWG copper"],
      ["aluminum", ["6 AWG", "4 AWG", "3 AWG"], "4 AWG aluminum"],
    ] as const
  ).map(([metal, values, words]) =>
    overWords({
      name: `smallest ${metal} tap in a high bay`,
      where: [`topics/tap-size/tap.ts HIGH_BAY_SMALLEST.${metal}`],
      kind: "published",
      source: `NFPA 70 240.21(B)(4)(7): ${words} or larger`,
      unit: "size",
      step: "conductor size",
      values,
      answers: ["false", "true", "true"],
      ask: (size, edition) =>
        allowed(
          {
            allowance: "feeder-tap-in-high-bay",
            size,
            deviceAheadA: 60,
            endDeviceA: 20,
            nonContinuousLoadA: 10,
            run: plainRun({ metal, insulation: "XHHW-2" }),
          },
          edition,
        ),
    }),
  ),
  overWords({
    name: "smallest tap in parallel",
    where: ["topics/tap-size/tap.ts SMALLEST_PARALLEL"],
    kind: "published",
    source: "NFPA 70 310.10(G) (310.10(H) in 2017): 1/0 AWG and larger",
    unit: "size",
    step: "conductor size",
    values: ["1 AWG", "1/0 AWG", "2/0 AWG"],
    answers: ["false", "true", "true"],
    ask: (size, edition) => allowed({ size, run: plainRun({ sets: 2 }) }, edition),
  }),
];
