/**
 * The cells against each other and against physics: what no second reading of the same page can show wrong. Expected
 * values: hand (each formula stands beside its test).
 */
import { EDITIONS, type Edition, type EditionTables, sizeOf, type Table, type TableRow } from "@landfast/rules";
import { describe, expect, test } from "vitest";

const LATEST = EDITIONS.find(({ edition }) => edition === "2023") as Edition;
const { tables } = LATEST;

function columns(table: Table): readonly string[] {
  return table.data.columns.map(({ id }) => id);
}

/** A number cell; undefined where the page prints none. */
function numberAt(row: TableRow, column: string): number | undefined {
  const cell = row.cells[column];
  if (cell === undefined) throw new Error(`no column ${column}`);
  return "refusal" in cell || typeof cell.value !== "number" ? undefined : cell.value;
}

/** Area in kcmil of a cell that names a size. */
function areaAt(row: TableRow, column: string): number | undefined {
  const cell = row.cells[column];
  if (cell === undefined) throw new Error(`no column ${column}`);
  return "refusal" in cell || !/ (AWG|kcmil)$/.test(String(cell.value)) ? undefined : areaKcmil(String(cell.value));
}

function areaKcmil(size: string): number {
  const { areaKcmil: area } = sizeOf(size);
  return area;
}

/** Places where a column goes down on its way down the page. */
function descents(table: Table, column: string, at: typeof numberAt = numberAt): string[] {
  const found: string[] = [];
  let before = Number.NEGATIVE_INFINITY;
  for (const row of table.rows) {
    const value = at(row, column);
    if (value === undefined) continue;
    if (!(value >= before)) found.push(`${table.id} ${column}: ${value} after ${before} at ${row.label}`);
    before = value;
  }
  return found;
}

/** Rows in which the first column is above the second. */
function above(table: Table, lower: string, upper: string, at: typeof numberAt = numberAt): string[] {
  return table.rows.flatMap((row) => {
    const [low, high] = [at(row, lower), at(row, upper)];
    return low === undefined || high === undefined || low <= high ? [] : [`${row.label}: ${low} > ${high}`];
  });
}

/** Rows whose value is farther from the formula than the share of it allowed. */
function off(
  table: Table,
  column: string,
  formula: (row: TableRow) => number | undefined,
  share: number,
  least = 0,
): string[] {
  return table.rows.flatMap((row) => {
    const printed = numberAt(row, column);
    const worked = formula(row);
    if (printed === undefined || worked === undefined) return [];
    return Math.abs(printed - worked) <= Math.max(share * worked, least)
      ? []
      : [`${table.id} ${column} at ${row.label}: ${printed}, worked ${worked}`];
  });
}

describe("columns that only rise or only fall", () => {
  const rising: readonly (readonly [keyof EditionTables, readonly string[]])[] = [
    ["ampacityRaceway", columns(tables.ampacityRaceway)],
    ["ampacityFreeAir", columns(tables.ampacityFreeAir)],
    ["smallConductor", []],
    ["boxVolume", []],
    ["torqueByConductor", columns(tables.torqueByConductor)],
    ["torqueSmallSlotted", columns(tables.torqueSmallSlotted)],
    ["torqueSocket", columns(tables.torqueSocket)],
    ["padBoltTorque", columns(tables.padBoltTorque)],
    ["boltTorqueNeta", columns(tables.boltTorqueNeta)],
    ["bendingOpposite", ["wires1", "wires2", "wires3", "wires4"]],
    ["bendingOppositeCompact", ["wires1", "wires2", "wires3", "wires4"]],
    ["bendingSide", columns(tables.bendingSide)],
    ["bendingSideCompact", columns(tables.bendingSideCompact)],
    ["motorCurrent1ph", columns(tables.motorCurrent1ph)],
    ["motorCurrent3ph", columns(tables.motorCurrent3ph)],
    ["insulatedArea", columns(tables.insulatedArea)],
    ["insulatedDiameter", columns(tables.insulatedDiameter)],
    ["compactArea", columns(tables.compactArea)],
    ["conductorPropertiesStranded", ["areaCmil", "strands", "overallDiameterIn", "overallAreaIn2"]],
    ["conductorPropertiesSolid", ["areaCmil", "overallDiameterIn", "overallAreaIn2"]],
  ];
  // hand: a larger conductor, screw, bolt or motor never takes less; the two size-by-word tables run upward on the page
  test.each(rising)("%s", (name, named) => {
    for (const column of named) expect(descents(tables[name], column)).toEqual([]);
  });

  test("equipment grounds, electrode conductors and bonding jumpers grow with what they go by", () => {
    const sized = [
      tables.equipmentGround,
      tables.electrodeConductorCopperService,
      tables.electrodeConductorAluminumService,
      tables.bondingJumperCopperSupply,
      tables.bondingJumperAluminumSupply,
    ];
    for (const table of sized) {
      for (const column of columns(table)) expect(descents(table, column, areaAt)).toEqual([]);
      // hand: aluminum conducts 61 % as well, so it is never the smaller of the two
      expect(above(table, "copper", "aluminum", areaAt)).toEqual([]);
      // hand: intervals follow each other without a gap and without an overlap
      for (const [index, row] of table.rows.slice(1).entries()) expect(row.low).toBe(table.rows[index]?.high);
    }
    const dwelling = LATEST.dwellingService.table as Table;
    for (const column of ["copper", "aluminum"]) expect(descents(dwelling, column, areaAt)).toEqual([]);
    expect(above(dwelling, "copper", "aluminum", areaAt)).toEqual([]);
  });

  test("ambient and adjustment factors fall, and more so for less heat-proof insulation", () => {
    for (const [table, order] of [
      [tables.ambientCorrection30c, ["t60", "t75", "t90"]],
      [tables.adjustmentFactor, ["percent"]],
    ] as const)
      for (const column of order) {
        const values = table.rows.map((row) => numberAt(row, column)).filter((value) => value !== undefined);
        expect([...values].sort((a, b) => b - a)).toEqual(values);
      }
    for (const row of tables.ambientCorrection30c.rows) {
      const [t60, t75, t90] = ["t60", "t75", "t90"].map((column) => numberAt(row, column));
      const hot = row.high > 30;
      if (t60 !== undefined && t75 !== undefined) expect(hot ? t60 <= t75 : t60 >= t75, row.label).toBe(true);
      if (t75 !== undefined && t90 !== undefined) expect(hot ? t75 <= t90 : t75 >= t90, row.label).toBe(true);
    }
  });

  test("standard ratings rise, and the rows of every table by size do", () => {
    const ratings = tables.standardRatings.rows.map(({ label }) => Number(label));
    expect([...ratings].sort((a, b) => a - b)).toEqual(ratings);
    for (const table of Object.values(tables) as Table[]) {
      if (table.data.rowKey.kind !== "size") continue;
      const areas = table.rows.map(({ label }) => areaKcmil(label));
      expect(
        [...areas].sort((a, b) => a - b),
        table.id,
      ).toEqual(areas);
    }
  });
});

describe("ampacity", () => {
  test.each(["ampacityRaceway", "ampacityFreeAir"] as const)("%s: 60 C <= 75 C <= 90 C, aluminum <= copper", (name) => {
    for (const metal of ["copper", "aluminum"]) {
      expect(above(tables[name], `${metal}60`, `${metal}75`)).toEqual([]);
      expect(above(tables[name], `${metal}75`, `${metal}90`)).toEqual([]);
    }
    for (const column of ["60", "75", "90"])
      expect(above(tables[name], `aluminum${column}`, `copper${column}`)).toEqual([]);
  });

  // hand: heat carried off grows with the rise above 30 C and heat made with the resistance, so
  // I60 / I75 = sqrt((30 / 45) x (234.5 + 75) / (234.5 + 60)) = 0.837 and I90 / I75 = sqrt((60 / 45) x 309.5 / 324.5) = 1.128
  test.each([
    ["copper60", "copper75", 0.837],
    ["copper90", "copper75", 1.128],
    ["aluminum60", "aluminum75", 0.837],
    ["aluminum90", "aluminum75", 1.128],
  ] as const)("%s follows from %s x %d, within the rounding to 5 A", (column, from, ratio) => {
    for (const table of [tables.ampacityRaceway, tables.ampacityFreeAir])
      expect(off(table, column, (row) => (numberAt(row, from) ?? Number.NaN) * ratio || undefined, 0.02, 5.1)).toEqual(
        [],
      );
  });

  test("in free air at least what a raceway carries", () => {
    for (const [index, row] of tables.ampacityRaceway.rows.entries())
      for (const column of columns(tables.ampacityRaceway)) {
        const [inside, outside] = [
          numberAt(row, column),
          numberAt(tables.ampacityFreeAir.rows[index] as TableRow, column),
        ];
        if (inside !== undefined) expect(outside, `${row.label} ${column}`).toBeGreaterThanOrEqual(inside);
      }
  });

  // hand: NFPA 70 310.15(B): sqrt((Tc - Ta) / (Tc - 30)) at the top of each band
  test.each([60, 75, 90])("ambient factor of the %d C column is the formula at the top of its band", (rating) => {
    const formula = (row: TableRow): number => Math.sqrt((rating - row.high) / (rating - 30));
    expect(off(tables.ambientCorrection30c, `t${rating}`, formula, 0, 0.00501)).toEqual([]);
  });

  test("a small conductor's device is at least 0.6 and at most 1.0 of its 75 C ampacity, and a standard one", () => {
    // hand: 14 AWG 15 of 20 A, 12 AWG 20 of 25 A, 10 AWG 30 of 35 A
    for (const row of tables.smallConductor.rows) {
      const ampacity = tables.ampacityRaceway.rows.find(({ label }) => label === row.label) as TableRow;
      for (const metal of ["copper", "aluminum"]) {
        const [device, carries] = [numberAt(row, metal), numberAt(ampacity, `${metal}75`)];
        if (device === undefined || carries === undefined) continue;
        expect(device / carries, row.label).toBeGreaterThanOrEqual(0.6);
        expect(device / carries, row.label).toBeLessThanOrEqual(1);
        expect(tables.standardRatings.rows.map(({ label }) => label)).toContain(String(device));
      }
    }
  });
});

describe("conductors", () => {
  // hand: ASTM B258: d = 0.005 in x 92^((36 - n) / 39), area in cmil = (1000 d)^2; printed to four figures at most
  test("area of each AWG size follows from its number", () => {
    const number = (label: string): number =>
      label.includes("/") ? 1 - Number.parseInt(label, 10) : Number.parseInt(label, 10);
    for (const table of [tables.conductorPropertiesStranded, tables.conductorPropertiesSolid])
      expect(off(table, "areaCmil", ({ label }) => (5 * 92 ** ((36 - number(label)) / 39)) ** 2, 0.003)).toEqual([]);
  });

  // hand: area by name: 250 kcmil is 250; 1 kcmil = 0.5067075 mm2
  test("kcmil sizes have the area of their name, and a circular mil its metric area", () => {
    for (const { label } of tables.ampacityRaceway.rows)
      if (label.endsWith("kcmil")) expect(areaKcmil(label)).toBe(Number.parseInt(label, 10));
    const mil = tables.physicalConstants.rows.find(({ label }) => label === "circular mil") as TableRow;
    // hand: pi / 4 x (0.0254 mm)^2
    expect(numberAt(mil, "value")).toBeCloseTo((Math.PI / 4) * 0.0254 ** 2, 10);
  });

  // hand: strands x strand diameter^2 is the area in cmil, within the rounding of the diameter to a mil
  test("strands and their diameter make up the area, and the circle around them the overall area", () => {
    const table = tables.conductorPropertiesStranded;
    for (const row of table.rows) {
      const [strands = 0, strand = 0, diameter = 0, area = 0] = [
        "strands",
        "strandDiameterIn",
        "overallDiameterIn",
        "overallAreaIn2",
      ].map((column) => numberAt(row, column));
      const kcmil = areaKcmil(row.label);
      expect(Math.abs(strands * strand ** 2 * 1000 - kcmil) / kcmil, row.label).toBeLessThan(0.03 + 0.0011 / strand);
      expect(Math.abs((Math.PI / 4) * diameter ** 2 - area), row.label).toBeLessThanOrEqual(0.0011);
    }
    for (const row of tables.conductorPropertiesSolid.rows) {
      const diameter = numberAt(row, "overallDiameterIn") ?? Number.NaN;
      expect(Math.abs(diameter ** 2 * 1000 - areaKcmil(row.label)) / areaKcmil(row.label), row.label).toBeLessThan(
        0.015,
      );
      expect(
        Math.abs((Math.PI / 4) * diameter ** 2 - (numberAt(row, "overallAreaIn2") ?? Number.NaN)),
      ).toBeLessThanOrEqual(0.0006);
    }
  });

  // hand: R = resistivity at 20 C x (1 + coefficient x 55) x 304.8 m / area, and 2 % more for the lay of the strands
  test.each([
    ["copper", "dcCopperUncoatedOhmPerKft"],
    ["aluminum", "dcAluminumOhmPerKft"],
  ])("dc resistance of %s follows from its resistivity", (metal, column) => {
    const constant = (name: string): number =>
      numberAt(tables.physicalConstants.rows.find(({ label }) => label === name) as TableRow, "value") ?? Number.NaN;
    const at75 =
      constant(`${metal} resistivity at 20 C`) * (1 + constant(`${metal} temperature coefficient at 20 C`) * 55);
    const solid = ({ label }: TableRow): number => (at75 * 304.8) / (areaKcmil(label) * 0.5067075);
    expect(off(tables.conductorPropertiesSolid, column, solid, 0.01)).toEqual([]);
    expect(off(tables.conductorPropertiesStranded, column, (row) => solid(row) * 1.02, 0.012)).toEqual([]);
  });

  test("tinned copper has one to eight percent more resistance than plain", () => {
    for (const table of [tables.conductorPropertiesSolid, tables.conductorPropertiesStranded])
      for (const row of table.rows) {
        const plain = numberAt(row, "dcCopperUncoatedOhmPerKft") ?? Number.NaN;
        const coated = numberAt(row, "dcCopperCoatedOhmPerKft") ?? Number.NaN;
        expect(coated / plain, row.label).toBeGreaterThan(1.01);
        expect(coated / plain, row.label).toBeLessThan(1.08);
      }
  });

  // hand: note of the table: Z = R cos + X sin, 0.85 and 0.527
  test.each(["Copper", "Aluminum"])("effective impedance of %s is R x 0.85 + X x 0.527", (metal) => {
    for (const [conduit, x] of [
      ["Pvc", "xPvcAluminum"],
      ["Aluminum", "xPvcAluminum"],
      ["Steel", "xSteel"],
    ] as const) {
      const formula = (row: TableRow): number | undefined => {
        const r = numberAt(row, `r${metal}${conduit}`);
        const reactance = numberAt(row, x);
        return r === undefined || reactance === undefined ? undefined : r * 0.85 + reactance * 0.527;
      };
      // Resistance and impedance are printed to two figures: each may be five percent off where it begins with a 1.
      expect(off(tables.acImpedance, `z085${metal}${conduit}`, formula, 0.06, 0.0011)).toEqual([]);
    }
  });

  test("ac resistance is not below the dc resistance by more than the rounding, and rises from PVC to steel", () => {
    for (const row of tables.acImpedance.rows) {
      const dc = tables.conductorPropertiesStranded.rows.find(({ label }) => label === row.label) as TableRow;
      for (const [metal, column] of [
        ["Copper", "dcCopperUncoatedOhmPerKft"],
        ["Aluminum", "dcAluminumOhmPerKft"],
      ] as const) {
        const [inPvc, inSteel] = [numberAt(row, `r${metal}Pvc`), numberAt(row, `r${metal}Steel`)];
        if (inPvc === undefined || inSteel === undefined) continue;
        expect(inPvc / (numberAt(dc, column) ?? Number.NaN), `${row.label} ${metal}`).toBeGreaterThan(0.95);
        expect(inSteel, `${row.label} ${metal}`).toBeGreaterThanOrEqual(inPvc);
      }
      expect(numberAt(row, "xSteel"), row.label).toBeGreaterThan(numberAt(row, "xPvcAluminum") ?? Number.NaN);
    }
  });
});

describe("raceways and insulated conductors", () => {
  // hand: pi / 4 x d^2, and 60, 53, 31 and 40 percent of it, to the last printed figure
  test("each raceway's area follows from its diameter, and its shares from its area", () => {
    expect(
      off(
        tables.conduitArea,
        "totalAreaIn2",
        (row) => (Math.PI / 4) * (numberAt(row, "internalDiameterIn") ?? 0) ** 2,
        0.0012,
        0.0016,
      ),
    ).toEqual([]);
    for (const share of [60, 53, 31, 40])
      expect(
        off(
          tables.conduitArea,
          `fill${share}`,
          (row) => ((numberAt(row, "totalAreaIn2") ?? 0) * share) / 100,
          0.0005,
          0.00151,
        ),
      ).toEqual([]);
    // hand: 53 % for one conductor, 31 for two, 40 for more (Chapter 9 Table 1)
    expect(tables.conduitFill.rows.map((row) => numberAt(row, "percent"))).toEqual([53, 31, 40]);
  });

  test("within a kind a larger trade size is wider, and thicker walls leave less", () => {
    const wide = new Map(
      tables.conduitArea.rows.map((row) => [row.label, numberAt(row, "internalDiameterIn") ?? Number.NaN]),
    );
    let kind = "";
    let before = 0;
    for (const [label, diameter] of wide) {
      const [name = ""] = label.split(" ");
      if (name === kind) expect(diameter, label).toBeGreaterThan(before);
      kind = name;
      before = diameter;
      const size = label.slice(name.length + 1);
      if (name === "PVC-80") expect(diameter, label).toBeLessThan(wide.get(`PVC-40 ${size}`) ?? Number.NaN);
      if (name === "RMC" && Number.parseInt(size, 10) < 3) expect(diameter).toBeLessThan(wide.get(`IMC ${size}`) ?? 99);
      // hand: half-inch raceways are about 0.6 in wide inside, four-inch ones about 4 in: the name is near the bore
      const [whole, part] = size
        .split("-")
        .map((one) => (one.includes("/") ? Number(one[0]) / Number(one.slice(2)) : Number(one)));
      const named = (whole ?? 0) + (part ?? 0);
      expect(diameter / named, label).toBeGreaterThan(0.9);
      expect(diameter / named, label).toBeLessThan(1.4);
    }
  });

  test("an insulated conductor's area is the circle of its diameter", () => {
    for (const column of columns(tables.insulatedArea))
      for (const [index, row] of tables.insulatedArea.rows.entries()) {
        const diameter = numberAt(tables.insulatedDiameter.rows[index] as TableRow, column);
        const area = numberAt(row, column);
        expect(area === undefined).toBe(diameter === undefined);
        if (area === undefined || diameter === undefined) continue;
        expect(Math.abs((Math.PI / 4) * diameter ** 2 - area) / area, `${row.label} ${column}`).toBeLessThan(0.0085);
        const bare = tables.conductorPropertiesStranded.rows.find(({ label }) => label === row.label) as TableRow;
        expect(area, `${row.label} ${column}`).toBeGreaterThan(numberAt(bare, "overallAreaIn2") ?? Number.NaN);
      }
    for (const kind of ["thw", "thhn", "xhhw"])
      expect(
        off(
          tables.compactArea,
          `${kind}AreaIn2`,
          (row) => {
            const diameter = numberAt(row, `${kind}DiameterIn`);
            return diameter === undefined ? undefined : (Math.PI / 4) * diameter ** 2;
          },
          0.004,
        ),
      ).toEqual([]);
  });

  test("a compact conductor is thinner than the same size concentric", () => {
    for (const row of tables.compactArea.rows) {
      const round = tables.conductorPropertiesStranded.rows.find(({ label }) => label === row.label) as TableRow;
      const [compact, concentric] = [numberAt(row, "bareDiameterIn"), numberAt(round, "overallDiameterIn")];
      expect((compact ?? 0) / (concentric ?? 1), row.label).toBeGreaterThan(0.89);
      expect((compact ?? 0) / (concentric ?? 1), row.label).toBeLessThan(0.965);
    }
  });
});

describe("torques, bends and boxes", () => {
  test("a wider slot, a split bolt and a better bolt take more torque", () => {
    expect(above(tables.torqueByConductor, "slottedSmall", "slottedLarge")).toEqual([]);
    expect(above(tables.torqueByConductor, "slottedLarge", "externalHex")).toEqual([]);
    expect(above(tables.torqueByConductor, "externalHex", "splitBolt")).toEqual([]);
    expect(above(tables.torqueSmallSlotted, "narrow", "wide")).toEqual([]);
    const neta = tables.boltTorqueNeta;
    for (const [lower, upper] of [
      ["steelGrade1And2", "steelGrade5"],
      ["steelGrade5", "steelGrade7"],
      ["steelGrade7", "steelGrade8"],
      ["aluminumLubricated", "siliconBronzeLubricated"],
      ["siliconBronzeLubricated", "siliconBronzeUnlubricated"],
    ] as const)
      expect(above(neta, lower, upper).filter((row) => !row.startsWith("3/8"))).toEqual([]);
    expect(above(tables.padBoltTorque, "aluminumLubricated", "steelOrBronze")).toEqual([]);
  });

  test("more wires to a terminal need no less space, and a reduction leaves some", () => {
    for (const table of [
      tables.bendingOpposite,
      tables.bendingOppositeCompact,
      tables.bendingSide,
      tables.bendingSideCompact,
    ]) {
      const wires = columns(table).filter((column) => column.startsWith("wires"));
      for (const [index, column] of wires.slice(1).entries())
        expect(above(table, wires[index] ?? "", column)).toEqual([]);
      for (const column of columns(table).filter((one) => one.startsWith("reduction"))) {
        expect(above(table, column, column.replace("reduction", "wires"))).toEqual([]);
        // hand: a, b, c, d, e stand for 0.5, 1, 1.5, 2 and 3 in
        for (const row of table.rows) expect([undefined, 0.5, 1, 1.5, 2, 3]).toContain(numberAt(row, column));
      }
    }
  });

  test("the compact columns say what the ordinary ones say of the size of the same diameter", () => {
    // hand: the same line of print serves both; a compact conductor is one to three sizes larger on the same line
    const lines = (table: Table): string[] =>
      table.rows.map((row) =>
        columns(table)
          .map((column) => JSON.stringify(row.cells[column]))
          .join(),
      );
    for (const [ordinary, compact] of [
      [tables.bendingOpposite, tables.bendingOppositeCompact],
      [tables.bendingSide, tables.bendingSideCompact],
    ] as const) {
      expect(lines(ordinary).length).toBeGreaterThan(compact.rows.length);
      for (const [index, row] of compact.rows.entries()) {
        const line = ordinary.rows[index] as TableRow;
        expect(areaKcmil(row.key[0] ?? "")).toBeGreaterThan(areaKcmil(line.key[0] ?? "") - 1e-9);
        for (const column of columns(compact))
          expect(numberAt(row, column), `${row.label} ${column}`).toBe(numberAt(line, column));
      }
    }
  });

  // hand: 230 V x 1.15 = 200 V, x 1.10 = 208 V, x 2 = 115 V, / 2 = 460 V, / 2.5 = 575 V, / 10 = 2300 V
  test.each([
    ["motorCurrent1ph", "v200", 1.15],
    ["motorCurrent1ph", "v208", 1.1],
    ["motorCurrent1ph", "v115", 2],
    ["motorCurrent3ph", "v200", 1.15],
    ["motorCurrent3ph", "v208", 1.1],
    ["motorCurrent3ph", "v115", 2],
    ["motorCurrent3ph", "v460", 0.5],
    ["motorCurrent3ph", "v575", 0.4],
    ["motorCurrent3ph", "v2300", 0.1],
  ] as const)("%s %s is %d of the current at 230 V", (name, column, ratio) => {
    expect(
      off(
        tables[name],
        column,
        (row) => {
          const at230 = numberAt(row, "v230");
          return at230 === undefined ? undefined : at230 * ratio;
        },
        column === "v2300" ? 0.05 : 0.035,
        0.11,
      ),
    ).toEqual([]);
  });

  // hand: 1.50, 1.75 ... 3.00 by quarters, then 5.00 (314.16(B))
  test("box volumes go by quarters of a cubic inch", () => {
    for (const row of tables.boxVolume.rows) expect(((numberAt(row, "volumeIn3") ?? Number.NaN) * 4) % 1).toBe(0);
  });
});

describe("words", () => {
  // hand: "-2" is 90 C in every place; a W without it is 75 C, TW and UF 60 C; two H without W are for dry and damp places
  test("an insulation's letters say its ratings", () => {
    for (const row of tables.insulationTypes.rows) {
      const [dry, damp, wet] = ["dry", "damp", "wet"].map((column) => numberAt(row, column));
      const [last = ""] = row.label.split("/").slice(-1);
      const expected = last.endsWith("-2")
        ? [90, 90, 90]
        : ({
            THHN: [90, 90, undefined],
            RHH: [90, 90, undefined],
            THWN: [75, 75, 75],
            RHW: [75, 75, 75],
            THW: [75, 75, 75],
            USE: [75, 75, 75],
            XHHW: [90, 90, 75],
            TW: [60, 60, 60],
            UF: [60, 60, 60],
            NM: [60, undefined, undefined],
          }[last] ?? []);
      expect([dry, damp, wet], row.label).toEqual(expected);
    }
  });

  // hand: 7 in a mark is 75 C, 9 is 90 C
  test("a mark's letters and figure say its metals and temperature", () => {
    for (const row of tables.markingCodes.rows) {
      const metals = (row.cells["metals"] as { value: string }).value.split(" ");
      expect(metals.includes("copper"), row.label).toBe(/CU|CO\/ALR/.test(row.label));
      expect(metals.includes("aluminum"), row.label).toBe(/AL/.test(row.label));
      const figure = /[79]/.exec(row.label)?.[0];
      expect(numberAt(row, "ratingC"), row.label).toBe(figure === undefined ? undefined : figure === "7" ? 75 : 90);
    }
  });

  // hand: k = k0 sqrt(ln((b + final) / (b + initial))), k0 226, 148, 78 and b 234.5, 228, 202 for copper, aluminum, steel
  test("each k factor follows from its temperatures", () => {
    for (const [metal, k0, b] of [
      ["copper", 226, 234.5],
      ["aluminum", 148, 228],
      ["steel", 78, 202],
    ] as const)
      expect(
        off(
          tables.kFactors,
          metal,
          (row) => {
            const [from, to] = [numberAt(row, "initialC"), numberAt(row, "finalC")];
            return from === undefined || to === undefined ? undefined : k0 * Math.sqrt(Math.log((b + to) / (b + from)));
          },
          0,
          1,
        ),
      ).toEqual([]);
  });

  // hand: a separate conductor starts at 30 C of the air; one in a cable at the cable's own temperature, which its name says
  test("the temperatures of the k factors follow from their names", () => {
    const FINAL: readonly (readonly [RegExp, number])[] = [
      [/PVC.*up to 300/, 160],
      [/PVC.*over 300/, 140],
      [/XLPE/, 250],
      [/rubber 60/, 200],
      [/rubber 85/, 220],
      [/silicone/, 350],
    ];
    for (const row of tables.kFactors.rows) {
      const own = /silicone/.test(row.label) ? 180 : Number(/(\d+) C/.exec(row.label)?.[1]);
      expect(numberAt(row, "initialC"), row.label).toBe(row.label.startsWith("separate") ? 30 : own);
      expect(numberAt(row, "finalC"), row.label).toBe(FINAL.find(([name]) => name.test(row.label))?.[1]);
    }
  });
});

/** One statement a table holds for every edition: a table that did not change has the cells of the others. */
describe("editions", () => {
  test("tables that differ between editions are the small conductors, the ratings and the dwelling's sizes only", () => {
    const differing = Object.keys(tables).filter((name) => {
      const prints = EDITIONS.map((edition) =>
        JSON.stringify(edition.tables[name as keyof EditionTables].data.rows.map(({ key, cells }) => [key, cells])),
      );
      return new Set(prints).size > 1;
    });
    expect(differing).toEqual(["smallConductor", "standardRatings"]);
    expect(EDITIONS.map(({ dwellingService }) => dwellingService.table !== null)).toEqual([false, true, true]);
  });
});
