import type { CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import { divide, exactOf, multiply } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import { type DeviceKind, standardRatingFrom, standardRatingTo } from "../../core/standard-rating.js";
import { type Motor, motorCurrent } from "./motor-current.js";

/** "time-delay-fuse": dual element, but not Class CC, which goes by the column of nontime-delay fuses. */
export const SHORT_CIRCUIT_DEVICES = [
  "nontime-delay-fuse",
  "time-delay-fuse",
  "instantaneous-trip-breaker",
  "inverse-time-breaker",
] as const;
export type ShortCircuitDeviceKind = (typeof SHORT_CIRCUIT_DEVICES)[number];

/** What is asked of the device. */
export interface ShortCircuitDevice {
  readonly kind: ShortCircuitDeviceKind;
  /** A motor of Design B for energy or premium efficiency. Matters for instantaneous trip only. */
  readonly efficientDesignB?: boolean;
  /** The device found by the table does not let the motor start. Absent: it is not said to fail. */
  readonly failsToStart?: boolean;
}

interface DeviceTerms {
  readonly column: string;
  readonly words: string;
  /** Undefined for a setting, which is no rating. */
  readonly ratings: DeviceKind | undefined;
}

const TERMS: Readonly<Record<ShortCircuitDeviceKind, DeviceTerms>> = {
  "nontime-delay-fuse": { column: "nontimeDelayFuse", words: "nontime-delay fuse", ratings: "fuse" },
  "time-delay-fuse": { column: "timeDelayFuse", words: "time-delay fuse", ratings: "fuse" },
  "instantaneous-trip-breaker": {
    column: "instantaneousTrip",
    words: "instantaneous-trip breaker",
    ratings: undefined,
  },
  "inverse-time-breaker": { column: "inverseTime", words: "inverse-time breaker", ratings: "circuit-breaker" },
};

/** The row of Design B motors for energy or premium efficiency. */
const EFFICIENT_DESIGN_B = "squirrel-cage-design-b-efficient";

/** Fuses above this rating have a limit of their own, and breakers a lower one for motors above this current. */
const SMALL_FUSE_UP_TO_A = 600;
const SMALL_MOTOR_UP_TO_A = 100;
/** In no case more than so many percent of the motor's current, where the motor does not start otherwise. */
const NONTIME_DELAY_PERCENT = 400;
const TIME_DELAY_PERCENT = 225;
const LARGE_FUSE_PERCENT = 300;
const BREAKER_SMALL_MOTOR_PERCENT = 400;
const BREAKER_LARGE_MOTOR_PERCENT = 300;
const TRIP_PERCENT = 1300;
const TRIP_EFFICIENT_PERCENT = 1700;

/**
 * The largest short-circuit device of one motor.
 *
 * NFPA 70 430.52(C)(1), (3) and Table 430.52 (2017, 2020, 2023; Table 430.52(C)(1) in 2023), in our words: the percentage of
 * the table of the motor's current, and where that is no standard rating the next one above it. Where the motor does not
 * start on it, more, but never beyond 400 % for nontime-delay fuses up to 600 A, 225 % for time-delay fuses, 300 % for fuses
 * above 600 A, 400 % for inverse-time breakers up to 100 A of motor current and 300 % above. Instantaneous trips, only as
 * part of a listed combination controller, up to 1300 %, or 1700 % for efficient Design B, where an evaluation shows the need.
 * Worked: 25 hp, 460 V, 34 A, inverse-time: 34 x 250 / 100 = 85 A, so 90 A; 34 x 400 / 100 = 136, so 125 A if it fails to start.
 * Fuses above 600 A count only where those of 600 A are allowed too, so that every rating below the answer is allowed:
 * 221 A on time-delay fuses: 221 x 225 / 100 = 497.25, so 450 A, although 221 x 300 / 100 = 663 A would let in one of 601 A.
 * Silent: values in the maker's table of overload relays, which may ask for less (430.52(C)(2)); torque motors, several
 * windings, and Class CC fuses, for which the nontime-delay column holds.
 */
export function shortCircuitDevice(
  sheet: CalculationSheet,
  motor: Motor,
  device: ShortCircuitDevice | undefined,
  edition: Edition,
): CalculationFinding {
  const cite = edition.clauses.motorShortCircuitDevice;
  if (device === undefined)
    return sheet.ask(
      "question/shortCircuitDevice",
      "The kind of the device decides how large it may be, and it is not given.",
      cite,
    );
  const terms = TERMS[device.kind];
  const current = motorCurrent(sheet, motor, edition);
  if (isClosed(current)) return current;
  const kind = sheet.given("kind of device", device.kind, "question/shortCircuitDevice/kind");
  const row = rowOf(sheet, motor, device, cite);
  if (typeof row !== "string") return row;
  const table = edition.tables.motorShortCircuitDevice;
  const percent = sheet.readAt("percent of the motor current", table, row, terms.column, [kind]);
  if (isClosed(percent)) return percent;
  const byTable = share(sheet, "largest device by the table", current, percent, cite);
  return terms.ratings === undefined
    ? settingAnswer(sheet, device.failsToStart === true, row === EFFICIENT_DESIGN_B, current, byTable, edition)
    : ratingAnswer({ sheet, device, terms, current, byTable, edition }, terms.ratings);
}

/** The row of the table; where a fact that decides is missing, the question for it. */
function rowOf(
  sheet: CalculationSheet,
  motor: Motor,
  { kind, efficientDesignB }: ShortCircuitDevice,
  cite: Citation,
): string | CalculationFinding {
  if (motor.kind !== "squirrel-cage" || kind !== "instantaneous-trip-breaker") return motor.kind;
  if (efficientDesignB === undefined)
    return sheet.ask(
      "question/shortCircuitDevice/efficientDesignB",
      "Efficient motors of Design B may have a higher instantaneous trip; whether this is one, is not given.",
      cite,
    );
  sheet.given(
    "Design B for energy or premium efficiency",
    efficientDesignB,
    "question/shortCircuitDevice/efficientDesignB",
  );
  return efficientDesignB ? EFFICIENT_DESIGN_B : motor.kind;
}

function share(sheet: CalculationSheet, label: string, current: Step, percent: Step, cite: Citation) {
  return sheet.exactly(
    label,
    divide(multiply(sheet.exact(current), sheet.exact(percent)), exactOf(100)),
    "A",
    [current, percent],
    "motor current x percent / 100",
    `${String(current.value)} x ${String(percent.value)} / 100`,
    cite,
  );
}

/** A trip is set, not rated, so no standard rating applies to it. */
function settingAnswer(
  sheet: CalculationSheet,
  failsToStart: boolean,
  isEfficientDesignB: boolean,
  current: Step,
  byTable: Step,
  edition: Edition,
): CalculationFinding {
  const cite = edition.clauses.motorTripSetting;
  const advice = [
    "An instantaneous-trip breaker is adjustable and part of a combination controller that is listed with it.",
  ];
  if (!failsToStart)
    return sheet.finish({
      sentence: `The trip is set to no more than ${shown(byTable.value)} A.`,
      cite,
      results: [{ name: "largest setting", step: byTable }],
      advice,
    });
  const fails = failsStep(sheet);
  const most = sheet.state(
    "percent never to be passed",
    isEfficientDesignB ? TRIP_EFFICIENT_PERCENT : TRIP_PERCENT,
    cite,
    "%",
    [fails],
  );
  const setting = share(sheet, "largest setting where the motor does not start otherwise", current, most, cite);
  return sheet.finish({
    sentence: `The trip is set to no more than ${shown(setting.value)} A, and that only where an engineering evaluation shows that ${shown(byTable.value)} A is not enough.`,
    cite,
    results: [
      { name: "largest setting", step: setting },
      { name: "largest setting by the table", step: byTable },
    ],
    advice,
  });
}

interface RatingWork {
  readonly sheet: CalculationSheet;
  readonly device: ShortCircuitDevice;
  readonly terms: DeviceTerms;
  readonly current: Step;
  readonly byTable: Step;
  readonly edition: Edition;
}

function ratingAnswer(work: RatingWork, ratings: DeviceKind): CalculationFinding {
  const { sheet, device, terms, current, byTable, edition } = work;
  const cite = edition.clauses.motorShortCircuitDevice;
  const nextA = standardRatingFrom(edition, Number(byTable.value), ratings);
  if (nextA === undefined)
    return sheet.refuse(
      "NO_SOLUTION",
      `No standard ${terms.words} is as large as the ${shown(byTable.value)} A allowed; any standard one is within it.`,
      edition.clauses.standardRatings,
    );
  const next = sheet.conclude(
    "largest standard device",
    nextA,
    [byTable],
    nextA === Number(byTable.value)
      ? "the value of the table is a standard rating"
      : "the next standard rating above the value of the table",
    edition.clauses.standardRatings,
    "A",
  );
  const advice = ["A maker's table for the overload relay that names less is not to be passed."];
  if (device.failsToStart !== true)
    return sheet.finish({
      sentence: `The ${terms.words} is of ${String(nextA)} A or less: ${shown(byTable.value)} A by the table${nextA === Number(byTable.value) ? "" : ", and the next standard rating above it"}.`,
      cite,
      results: [
        { name: "largest device", step: next },
        { name: "largest device by the table", step: byTable },
        { name: "motor current", step: current },
      ],
      advice,
    });
  const fails = failsStep(sheet);
  const raisedA = Math.max(nextA, ...limitsOf(work, [fails]).map((limit) => withinLimit(limit, ratings, edition)));
  const raised = sheet.conclude(
    "largest device where the motor does not start otherwise",
    raisedA,
    [next, fails, sheet.last],
    raisedA === nextA
      ? "no standard rating lies between it and what is never to be passed"
      : "the largest standard rating within what is never to be passed",
    cite,
    "A",
  );
  return sheet.finish({
    sentence: `Where the motor does not start on ${String(nextA)} A, the ${terms.words} is of ${String(raisedA)} A or less.`,
    cite,
    results: [
      { name: "largest device", step: raised },
      { name: "largest device before it fails to start", step: next },
      { name: "largest device by the table", step: byTable },
      { name: "motor current", step: current },
    ],
    advice,
  });
}

function failsStep(sheet: CalculationSheet): Step {
  return sheet.given(
    "the motor does not start on the device of the table",
    true,
    "question/shortCircuitDevice/failsToStart",
  );
}

/** A limit, and the largest rating that it is for. */
interface RaisedLimit {
  readonly amperes: Step;
  readonly toA: number;
}

function limitsOf({ sheet, device, current, edition }: RatingWork, uses: readonly Step[]): readonly RaisedLimit[] {
  const cite = edition.clauses.motorShortCircuitDevice;
  const limit = (percent: number, toA: number, what: string): RaisedLimit => {
    const most = sheet.state(`percent never to be passed, ${what}`, percent, cite, "%", uses);
    return { amperes: share(sheet, `never to be passed, ${what}`, current, most, cite), toA };
  };
  if (device.kind === "inverse-time-breaker") {
    const small = Number(current.value) <= SMALL_MOTOR_UP_TO_A;
    return [
      limit(
        small ? BREAKER_SMALL_MOTOR_PERCENT : BREAKER_LARGE_MOTOR_PERCENT,
        Number.POSITIVE_INFINITY,
        `motor current ${small ? "up to" : "over"} ${String(SMALL_MOTOR_UP_TO_A)} A`,
      ),
    ];
  }
  const percent = device.kind === "time-delay-fuse" ? TIME_DELAY_PERCENT : NONTIME_DELAY_PERCENT;
  const upTo600 = limit(percent, SMALL_FUSE_UP_TO_A, `fuses up to ${String(SMALL_FUSE_UP_TO_A)} A`);
  return Number(upTo600.amperes.value) < SMALL_FUSE_UP_TO_A
    ? [upTo600]
    : [upTo600, limit(LARGE_FUSE_PERCENT, Number.POSITIVE_INFINITY, "larger fuses")];
}

/** The largest standard rating within the limit and among the ratings that it is for; 0 where there is none. */
function withinLimit({ amperes, toA }: RaisedLimit, ratings: DeviceKind, edition: Edition): number {
  return standardRatingTo(edition, Math.min(Number(amperes.value), toA), ratings) ?? 0;
}
