// The sizes a published table may name. Closed on purpose: "5 AWG" or "251 kcmil" in a table is a slip of the pen.

const AWG_NUMBERS = [30, 28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1] as const;
const AWG_AUGHTS = [1, 2, 3, 4] as const;
const KCMIL = [250, 300, 350, 400, 450, 500, 550, 600, 650, 700, 750, 800, 900, 1000, 1250, 1500, 1750, 2000] as const;
const MM2 = [
  "0.2",
  "0.34",
  "0.5",
  "0.75",
  "1",
  "1.5",
  "2.5",
  "4",
  "6",
  "10",
  "16",
  "25",
  "35",
  "50",
  "70",
  "95",
  "120",
  "150",
  "185",
  "240",
  "300",
  "400",
  "500",
  "630",
  "800",
  "1000",
  "1200",
] as const;

/** 1 kcmil in mm2: pi/4 times the square of 25.4 mm. */
const MM2_PER_KCMIL = (Math.PI / 4) * 25.4 ** 2 * 1e-3;

/** Area of a gauge number (1/0 is 0, 4/0 is -3) in mm2; each step is the 39th root of 92 in diameter (ASTM B258). */
function gaugeAreaMm2(gauge: number): number {
  const diameterMm = 0.127 * 92 ** ((36 - gauge) / 39);
  return (Math.PI / 4) * diameterMm ** 2;
}

const AREAS_MM2: ReadonlyMap<string, number> = new Map<string, number>([
  ...AWG_NUMBERS.map((gauge): [string, number] => [`${gauge} AWG`, gaugeAreaMm2(gauge)]),
  ...AWG_AUGHTS.map((aught): [string, number] => [`${aught}/0 AWG`, gaugeAreaMm2(1 - aught)]),
  ...KCMIL.map((size): [string, number] => [`${size} kcmil`, size * MM2_PER_KCMIL]),
  ...MM2.map((size): [string, number] => [`${size} mm2`, Number(size)]),
]);

/**
 * Area of a printed conductor size, for ordering only.
 *
 * @param size as written in a table: "14 AWG", "4/0 AWG", "250 kcmil", "35 mm2"
 * @returns area in mm2, or undefined for a size that is not in the list
 */
export function conductorAreaMm2(size: string): number | undefined {
  return AREAS_MM2.get(size);
}
