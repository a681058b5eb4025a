/** Numbers of the source at which no answer turns, and why. Each line must still be for at least one number. */
export interface Exempt {
  /** Against the number's name as `source-numbers.ts` gives it. */
  readonly like: RegExp;
  readonly because: string;
}

export const EXEMPT_NUMBERS: readonly Exempt[] = [
  {
    like: /: .*compare(Sizes|Exact)\(.* (<|<=|>|>=|===) 0$/,
    because: "the order of two values; where one of them is a limit it is named by itself",
  },
  { like: /: order (<|<=|>|>=|===|!==) 0$/, because: "the order of two values of a comparison that is asked for" },
  {
    like: /: .*\b(length|length \?\? 0\)|words|index|group|earlier|known|slash|question|unknown|remaining|total|rest|y|x|scale|rounded|n) (<|<=|>|>=|===|!==) [01]n?$/,
    because: "nothing, one or several of a list, a place in it, or the end of a count: no fact is measured against it",
  },
  {
    like: /: .*\b(value|parsed|length\.value|section\.value|continuousLoadA|nonContinuousLoadA|supportFittings|terminalBlockAllowance|numerator|quantity|connectors|failures|questions|hangsOn|conditions|count|fitting|attacked|unused|stepsLeft|rise)\)? (<|<=|>|>=|===|!==) 0n?$/,
    because: "something or nothing, or the sign: a quantity that cannot be, which the tests of bounds of requests hold",
  },
  {
    like: /: .*(\bsets|setsOf\(joint\)|racewaysBondedApart|raceways|inOne|counted|allowed|count|holes|gangs|number|crimps|most|lugs|wiresPerTerminal|conditions|unused|strands|bonding\)|\?\? 1\)|conductorsIn\(\w+\)|bin\.total|count\.value) (<|<=|>|>=|===|!==) [01]$/,
    because: "one or several, where none cannot be: each side has its cases in tests/rule-cases",
  },
  { like: /: sets % \w+ === 0$/, because: "whether sets divide evenly" },
  {
    like: / (fill|smallestTradeSize|adviceOnJamming|sizeForLimit|dropOf|finish|shown|amperesText|explain|dayStep|listWords|anyOf|patternWords|areaText|percentText|decimalText|oneDecimal): \d+$/,
    because: "places and letters shown",
  },
  { like: / text === "0"$|: text === "0"$/, because: "a trade size of nothing cannot be read" },
  {
    like: /core\/(quantity|exact|metric-series|unit-conversion)\.ts |conversion\/convert\.ts | MM2_PER_KCMIL$| INCHES_PER_FOOT$| writeFeet: | exactCelsius: | celsius: | temperature: (32|5|9)$| areaMm2: 4$| (conductorAreaCmil|areaIfPrinted): 1000$| lengthStep: 1000$| longestRun: | circleOf: |dcResistance: 1000$/,
    because:
      "units, their conversion and the exact numbers under them; tests/worked-cases and the tests of core hold them",
  },
  {
    like: / (writeShare|runAmpacity|percentFilled|wirewayFill|overloadAnswer|share|writeLimit|percentOf|allowedVolts|contactResistance|adjustment|bySizesPrinted|dropVolts|largestOhms): 1(00|000)$/,
    because: "the whole of a percentage, or a thousand feet",
  },
  {
    like: / AWG_KCMIL\./,
    because: "areas of Chapter 9 Table 8; tests/table-cells holds each against the second entry",
  },
  {
    like: / (KEPT|parseSize: 2000|exactOf: 10_000|torqueInUnits: 2000|OUTCOMES_KEPT|LANDINGS_KEPT)$/,
    because: "how much is remembered, which changes no answer",
  },
  {
    like: / (SHOWN|LEGS_MAX|SEARCH_STEPS|CONDUCTORS_SEARCHED|VIOLATION|MIXED_METALS|QUESTION|SHARING|parallelSets: 2)$/,
    because: "how far a search goes and how its costs are weighed; tests/selection compares it with a plain search",
  },
  {
    like: / (LOWEST_RATING_C|HIGHEST_RATING_C|LOWEST_C|HIGHEST_C|LOWEST_CAP_C)$|hasAmpacity: 60$/,
    because:
      "what parts are made for at least and at most, tried where a rating is not known: the columns of the tables",
  },
  {
    like: / (COPPER|ALUMINUM)\.(60|75|90)$|judge-demand\.ts carried: (60|75|90)$/,
    because: "names of the columns; temperatureColumn decides which",
  },
  {
    like: / TABLE_TEMPERATURE_C$/,
    because: "the temperature that Table 8 is printed for: a correction begins there and is none at it",
  },
  {
    like: / COUNTED\./,
    because: "conductors that a kind of circuit counts for; the tests of run-surroundings hold each",
  },
  { like: /\.edition$|\.locator$/, because: "where a publication stands" },
  {
    like: / UNMARKED_LARGE_C$/,
    because:
      "tried for a circuit of unknown rating, whose load of up to 100 A every size above 1 AWG carries at 60 C already",
  },
  { like: /listing\.ts \w+\.text$/, because: "the words of a size whose area stands beside it" },
  {
    like: / (longestTime|impedanceColumns|factorOf): [23]$|circular-mil-heating\.ts longestTime: 2$/,
    because: "squares, roots and wires of a formula",
  },
  { like: / nextBelow: 0\.5$/, because: "between two whole ratings: names the standard rating below, for the fix" },
  {
    like: /terminal-temperature\.ts fixFor: (60|75)$/,
    because: "which fix is named; the verdict stands before it",
  },
  {
    like: / hasOwnTable: 3\/8$/,
    because: "the one trade size of flexible conduit with a table of its own: it has no next",
  },
  {
    like: / (dutyOf|absentConductor): 2$/,
    because:
      "two conductors are the fewest that are joined: counts of a form, which the missing facts of tests/rule-cases hold",
  },
  {
    like: / wholeAmperes: 2$/,
    because: "half an ampere, which no fact can be stepped across; the test of the ampacity holds it",
  },
  {
    like: / (SMALLEST_SUPPLY|SMALLEST_SERVICE_KCMIL)$/,
    because: "a size within the first row of a table, whose bounds are asked each",
  },
  {
    like: /stub\.ts UNMARKED_AT_MOST_C$/,
    because: "which of two ends of a stub is the weaker; every remedy is checked by every rule at both ends",
  },
  {
    like: / bySizesPrinted: Number\(ambientFactor\.value\) >= 1$/,
    because: "whether the ambient lowers the ampacity; the bounds of the table of ambient temperatures are asked each",
  },
  {
    like: / NOT_APPLICABLE\.conditions$|\/(fact-numbers|outcome-memory)\.ts #/,
    because: "beginnings of counts",
  },
  {
    like: /(\?\? 0\]|compare\(first, second\)) !== 0$/,
    because: "whether an outcome is remembered, and whether two connectors rank alike",
  },
];
