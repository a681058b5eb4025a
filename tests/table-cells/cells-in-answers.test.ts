/**
 * The cells as the answers use them: the calculations are asked about every size, rating, bolt and insulation the tables
 * name, and each cell that a derivation reads is compared with the second entry. Expected values: published (the second
 * entry).
 */
import {
  BOLT_KINDS,
  type CalculationName,
  type CalculationQuestions,
  CONDUIT_MATERIALS,
  type ConductorRun,
  calculate,
  EDITIONS,
  type Edition,
  INSULATIONS,
  K_FACTOR_INSULATIONS,
  MOTOR_KINDS,
  PUBLISHED_TABLES,
  RACEWAY_KINDS,
  RULES,
  SHORT_CIRCUIT_DEVICES,
  type Step,
  type Table,
  type TableData,
} from "@landfast/rules";
import { describe, expect, test } from "vitest";
import { markSubject } from "./mark-subject.js";
import { nameOf, sameValue, secondEntryOf } from "./second-entry.js";

const METALS = ["copper", "aluminum", "copper-clad-aluminum"] as const;
const c = (value: number) => ({ value, unit: "Cel" }) as const;
const inches = (value: number) => ({ value, unit: "in" }) as const;
const PLAIN: ConductorRun = {
  metal: "copper",
  insulation: "XHHW-2",
  place: "dry",
  sets: 1,
  manner: "raceway",
  ambient: c(30),
  sunlitRoof: "none",
  grouping: { in: "raceway", conductors: 3 },
  supplyEnd: c(90),
  loadEnd: c(90),
};

type Ask = <Name extends CalculationName>(name: Name, question: CalculationQuestions[Name]) => void;

function keysOf(edition: Edition, table: keyof Edition["tables"]): readonly string[] {
  return edition.tables[table].data.rows.map(({ key }) => key[0] ?? "");
}

/** A value inside each row of a table of intervals. */
function insideOf(edition: Edition, table: keyof Edition["tables"]): readonly number[] {
  return edition.tables[table].rows.map(({ low, high }) => (Number.isFinite(high) ? high : low + 1));
}

function askAll(edition: Edition, ask: Ask): void {
  const sizes = keysOf(edition, "ampacityRaceway");
  for (const size of sizes) {
    for (const metal of METALS) {
      for (const manner of ["raceway", "free-air"] as const)
        for (const insulation of ["TW", "THW", "XHHW-2"] as const)
          for (const end of [60, 75, 90])
            ask("ampacity", {
              size,
              run: {
                ...PLAIN,
                metal,
                insulation,
                manner,
                grouping: manner === "raceway" ? { in: "raceway", conductors: 3 } : { in: "apart" },
                supplyEnd: c(end),
                loadEnd: c(end),
              },
            });
      ask("overcurrent-device", {
        ask: "largest-for-conductor",
        circuit: "branch-circuit",
        serves: "ordinary",
        deviceKind: "circuit-breaker",
        continuousLoadA: 1,
        nonContinuousLoadA: 1,
        conductor: { size, run: { ...PLAIN, metal, supplyEnd: c(60), loadEnd: c(60) } },
      });
      for (const stranding of ["solid", "stranded"] as const)
        for (const coating of ["uncoated", "coated"] as const)
          ask("dc-resistance", { metal, stranding, coating, size, temperature: c(40) });
      for (const conduit of CONDUIT_MATERIALS)
        for (const impedance of [
          { kind: "resistance-and-reactance", conduit, powerFactor: 0.8 },
          { kind: "effective-impedance", conduit },
        ] as const)
          ask("voltage-drop", {
            ask: "drop",
            system: "three-phase",
            voltageV: 480,
            loadA: 5,
            sets: 1,
            metal,
            impedance,
            size,
            length: { value: 10, unit: "ft" },
          });
      ask("electrode-conductor", { service: { size, metal, sets: 1 }, metal, electrode: "water-pipe" });
      for (const stranding of ["class-B", "compact"] as const)
        for (const entry of ["opposite", "side"] as const)
          for (const wiresPerTerminal of [1, 2, 3, 4, 5])
            ask("bending-space", { size, metal, stranding, entry, wiresPerTerminal, removableTerminal: true });
    }
    for (const drive of [
      { kind: "external-hex" },
      { kind: "split-bolt" },
      { kind: "slotted", screwSize: "10-and-larger", slotWidth: inches(0.04), slotLength: inches(0.2) },
      { kind: "slotted", screwSize: "10-and-larger", slotWidth: inches(0.06), slotLength: inches(0.3) },
    ] as const)
      ask("torque", { drive, marked: "unmarked", largestConductor: size });
    ask("convert", { kind: "size-area", size });
    for (const insulation of INSULATIONS)
      for (const stranding of ["class-B", "compact"] as const)
        for (const outerCovering of [true, false])
          ask("raceway-fill", {
            ask: "fill",
            raceway: { kind: "RMC", tradeSize: "6" },
            // Three equal ones: their diameter decides whether they may jam.
            conductors: [{ kind: "conductor", count: 3, size, insulation, stranding, outerCovering }],
          });
    ask("box-fill", {
      conductors: [{ count: 1, size, manner: "ends-or-spliced" }],
      equipmentGrounds: [],
      internalClamps: false,
      supportFittings: 0,
      devices: [],
    });
  }
  for (const insulation of INSULATIONS)
    for (const place of ["dry", "damp", "wet"] as const)
      ask("ampacity", { size: "1/0 AWG", run: { ...PLAIN, insulation, place } });
  for (const [insulation, ambient] of insideOf(edition, "ambientCorrection30c").flatMap((top) =>
    (["TW", "THW", "XHHW-2"] as const).map((type) => [type, top] as const),
  ))
    ask("ampacity", { size: "1/0 AWG", run: { ...PLAIN, insulation, ambient: c(ambient) } });
  for (const conductors of insideOf(edition, "adjustmentFactor"))
    ask("ampacity", { size: "1/0 AWG", run: { ...PLAIN, grouping: { in: "raceway", conductors } } });
  for (const deviceA of insideOf(edition, "equipmentGround"))
    for (const metal of METALS) ask("equipment-ground", { deviceA, metal });
  for (const [table, supplyMetal] of [
    ["bondingJumperCopperSupply", "copper"],
    ["bondingJumperAluminumSupply", "aluminum"],
  ] as const)
    for (const kcmil of insideOf(edition, table))
      for (const metal of METALS)
        for (const name of ["main", "electrode"]) {
          const supply = { size: sizeOfArea(edition, kcmil), metal: supplyMetal, sets: 1 } as const;
          if (name === "main") ask("bonding-jumper", { kind: "main", metal, supply });
          else ask("electrode-conductor", { service: supply, metal, electrode: "water-pipe" });
        }
  for (const row of edition.dwellingService.table?.data.rows ?? [])
    for (const metal of METALS)
      ask("dwelling-service", {
        ratingA: Number(row.key[0]),
        system: "single-phase-120/240",
        carriesWholeLoad: true,
        run: { ...PLAIN, metal, supplyEnd: c(75), loadEnd: c(75) },
      });
  for (const rating of keysOf(edition, "standardRatings"))
    for (const deviceKind of ["fuse", "circuit-breaker"] as const)
      ask("overcurrent-device", {
        ask: "smallest-for-load",
        circuit: "branch-circuit",
        serves: "ordinary",
        deviceKind,
        continuousLoadA: 0,
        nonContinuousLoadA: Number(rating),
      });
  for (const acrossFlats of keysOf(edition, "torqueSocket"))
    ask("torque", { drive: { kind: "socket", acrossFlats }, marked: "unmarked" });
  // hand: a slot as long as each row's, and one shorter and one longer than all
  for (const slotLength of [0.15, 5 / 32, 3 / 16, 7 / 32, 1 / 4, 9 / 32, 0.3])
    for (const slotWidth of [0.04, 0.06])
      ask("torque", {
        drive: { kind: "slotted", screwSize: "under-10", slotWidth: inches(slotWidth), slotLength: inches(slotLength) },
        marked: "unmarked",
        largestConductor: "12 AWG",
      });
  for (const table of ["padBoltTorque", "boltTorqueNeta"] as const)
    for (const diameter of keysOf(edition, table))
      for (const bolt of BOLT_KINDS)
        for (const lubricated of [true, false]) ask("bolt-torque", { table: "both", diameter, bolt, lubricated });
  ask("contact-resistance", {
    readings: [
      { joint: "A", microOhm: 1 },
      { joint: "B", microOhm: 1 },
    ],
  });
  for (const temperatureRiseC of [2, 12, 25, 50])
    ask("temperature-rise", {
      comparisons: [
        { with: "like-part", temperatureRiseC, likeLoad: true },
        { with: "air", temperatureRiseC },
      ],
    });
  for (const temperatureRiseC of [2, 12, 25])
    ask("temperature-rise", { comparisons: [{ with: "air", temperatureRiseC }] });
  for (const kind of RACEWAY_KINDS)
    for (const tradeSize of keysOf(edition, "conduitArea")
      .filter((key) => key.startsWith(`${kind} `))
      .map((key) => key.slice(kind.length + 1)))
      for (const count of [1, 2, 3])
        for (const nippleLength of [undefined, inches(12)])
          ask("raceway-fill", {
            ask: "fill",
            raceway: { kind, tradeSize },
            conductors: [{ kind: "conductor", count, size: "12 AWG", insulation: "THHN", stranding: "class-B" }],
            ...(nippleLength && { nippleLength }),
          });
  for (const [table, kind, voltages] of [
    ["motorCurrent1ph", "single-phase", [115, 200, 208, 230]],
    ["motorCurrent3ph", "squirrel-cage", [115, 200, 208, 230, 460, 575, 2300]],
  ] as const)
    for (const horsepower of keysOf(edition, table))
      for (const voltageV of voltages)
        ask("motor-circuit", {
          ask: "conductor",
          motor: { kind, horsepower, voltageV, build: "ordinary" },
          duty: "continuous",
        });
  for (const kind of MOTOR_KINDS)
    for (const device of SHORT_CIRCUIT_DEVICES)
      for (const efficientDesignB of [true, false])
        ask("motor-circuit", {
          ask: "short-circuit-device",
          motor: { kind, horsepower: "25", voltageV: 460, build: "multispeed", nameplateA: 30 },
          duty: "continuous",
          shortCircuitDevice: { kind: device, efficientDesignB },
        });
  for (const metal of METALS)
    for (const table of ["stranding", "fineStrands"] as const)
      for (const size of keysOf(edition, table)) ask("strand-class", { size, metal, strands: 5320 });
  for (const metal of METALS) {
    ask("short-circuit", {
      ask: "largest-current",
      metal,
      size: "4 AWG",
      timeS: 1,
      heating: { kind: "circular-mil", initialTemperature: c(75), finalTemperature: c(150) },
    });
    for (const arrangement of ["separate", "bundled"] as const)
      for (const insulation of K_FACTOR_INSULATIONS)
        for (const size of ["16 mm2", "400 mm2"])
          ask("short-circuit", {
            ask: "largest-current",
            metal,
            size,
            timeS: 1,
            heating: { kind: "k-factor", arrangement, insulation },
          });
  }
}

function tablesOf({ tables, dwellingService }: Edition): readonly Table[] {
  const all: readonly Table[] = Object.values<Table>({ ...tables });
  return dwellingService.table === null ? all : [...all, dwellingService.table];
}

/** The size of this area. */
function sizeOfArea(edition: Edition, kcmil: number): string {
  const named = `${String(kcmil)} kcmil`;
  const gauge = edition.tables.conductorPropertiesStranded.rows.find(({ cells }) => {
    const cell = cells["areaCmil"];
    return cell !== undefined && !("refusal" in cell) && cell.value === kcmil * 1000;
  });
  return gauge?.label ?? named;
}

const byName = new Map(
  PUBLISHED_TABLES.map((data) => [`${data.source.standard}-${data.source.edition}/${data.id}`, data]),
);

/** Cells that no derivation reads, and why; everything else that is printed must be read. */
const READ_BY_NOTHING: readonly (readonly [because: string, cells: Readonly<Record<string, number>>])[] = [
  [
    "fill goes by areas; the diameters of compact conductors are held to check them",
    { "compact-area thhnDiameterIn": 17, "compact-area thwDiameterIn": 18, "compact-area xhhwDiameterIn": 18 },
  ],
  [
    "solid and stranded conductors have one area, read in the stranded table; strands and diameters are held to check it",
    {
      "conductor-properties-solid areaCmil": 6,
      "conductor-properties-solid overallAreaIn2": 6,
      "conductor-properties-solid overallDiameterIn": 6,
      "conductor-properties-solid strands": 6,
      "conductor-properties-stranded overallDiameterIn": 30,
      "conductor-properties-stranded strandDiameterIn": 30,
      "conductor-properties-stranded strands": 30,
    },
  ],
  [
    "FMC and LFMC of trade size 3/8 go by a table of their own, which is not held, and are refused",
    {
      "conduit-area fill31": 2,
      "conduit-area fill40": 2,
      "conduit-area fill53": 2,
      "conduit-area fill60": 2,
      "conduit-area internalDiameterIn": 2,
      "conduit-area totalAreaIn2": 2,
    },
  ],
  [
    "the k factor holds the temperatures already, and no conductor of a joint is of steel",
    { "k-factors finalC": 16, "k-factors initialC": 16, "k-factors steel": 16 },
  ],
  ["notes and units are for the reader of the table", { "marking-codes note": 14, "physical-constants unit": 13 }],
  [
    "resistivities, coefficients at 20 C and zero-resistance temperatures are held to check the printed resistances",
    { "physical-constants value": 6 },
  ],
  [
    "a motor is asked by its own kind, and the row of efficient motors differs in the instantaneous trip only",
    {
      "motor-short-circuit-device instantaneousTrip": 1,
      "motor-short-circuit-device inverseTime": 2,
      "motor-short-circuit-device nontimeDelayFuse": 2,
      "motor-short-circuit-device timeDelayFuse": 2,
    },
  ],
  [
    "18 and 16 AWG are allowed for uses that the code lists one by one only, and are refused before their device is read",
    { "small-conductor copper": 2 },
  ],
];
/** 2023 only: 14 AWG copper-clad aluminum may have a 10 A device, but the edition prints no ampacity for it. */
const FOURTEEN_CLAD = { "small-conductor copperClad": 1 };

describe.each(EDITIONS.map((edition) => [edition.edition, edition] as const))("%s", (name, edition) => {
  const read = new Map<string, number>();
  const faults: string[] = [];

  function note(steps: readonly Step[]): void {
    for (const step of steps) {
      if (step.kind !== "read") continue;
      const { table, row, column, printed } = step.cell;
      const at = `${table}|${row}|${column}`;
      const before = read.get(at) ?? 0;
      read.set(at, before + 1);
      if (before > 0) continue;
      const data = byName.get(table) as TableData;
      const key = rowKeyOf(tablesOf(edition), table, row);
      const second = secondEntryOf(data)?.(key, column);
      if (second !== undefined && !sameValue(printed, second)) faults.push(`${at}: ${printed}, second entry ${second}`);
      if (!sameValue(String(step.value), printed)) faults.push(`${at}: ${String(step.value)} from ${printed}`);
    }
  }

  test("what answers read is what the second entry says, and no printed cell is read by no answer without a reason", () => {
    let asked = 0;
    askAll(edition, (calculation, question) => {
      asked += 1;
      note(calculate(calculation, question as never, { ruleSet: "nfpa70", edition: edition.edition }).steps);
    });
    for (const mark of keysOf(edition, "markingCodes"))
      for (const subject of markSubject(mark))
        for (const rule of RULES) {
          const finding = rule.check(subject, edition);
          if (finding.outcome !== "not-applicable") note(finding.steps);
        }
    expect(faults).toEqual([]);
    const unread = new Map<string, number>();
    let printedCells = 0;
    for (const table of tablesOf(edition))
      for (const row of table.rows)
        for (const column of table.data.columns) {
          const cell = row.cells[column.id];
          if (cell === undefined || "refusal" in cell) continue;
          printedCells += 1;
          if (read.has(`${table.id}|${row.label}|${column.id}`)) continue;
          const where = `${table.data.id} ${column.id}`;
          unread.set(where, (unread.get(where) ?? 0) + 1);
        }
    console.log(`${name}: ${asked} questions read ${read.size} of ${printedCells} printed cells`);
    expect(Object.fromEntries([...unread].sort())).toEqual(
      Object.assign({}, ...READ_BY_NOTHING.map(([, cells]) => cells), name === "2023" ? FOURTEEN_CLAD : {}),
    );
  }, 60_000);
});

function rowKeyOf(tables: readonly Table[], table: string, row: string): readonly string[] {
  const found = tables.find(({ id }) => id === table)?.rows.find(({ label }) => label === row);
  if (found === undefined) throw new Error(`${table} has no row ${nameOf([row])}`);
  return found.key;
}
