/** Every joint of every remedy is asked about again by itself, as anybody could who was handed it. */
import { demoCatalogue, larkfenJob } from "@landfast/data";
import { candidatesFor, checkJoint, type Joint, type RemedyJoint, remediesFor } from "@landfast/rules";
import fc from "fast-check";
import { expect, test } from "vitest";
import { mixedJoint } from "./mixed-joints.js";

/** Fixed, so that a failure can be seen again. */
const SEED = 20_261_125;
const { items } = demoCatalogue();
const { basis, joints } = larkfenJob();
const byPart = new Map(items.map((item) => [item.partNumber, item]));

function checkAgain({ joint, verdict, conditions }: RemedyJoint, inForce = basis): void {
  const { connector: choice } = joint;
  const part = choice !== undefined && "partNumber" in choice ? byPart.get(choice.partNumber) : undefined;
  const connector = part ?? joint.equipment?.terminal;
  if (connector === undefined) throw new Error("a joint of a remedy names no connector");
  const origin = part === undefined ? ("equipment" as const) : ("catalogue" as const);
  const finding = checkJoint({ joint, basis: inForce, connector, origin });
  expect(["accept", "accept-with-conditions"]).toContain(finding.verdict);
  expect(finding.verdict).toBe(verdict);
  expect(finding.conditions.map(({ sentence }) => sentence)).toEqual(conditions);
}

/** A conductor two to six sizes larger than its terminal was made for, and terminals of all sorts. */
const SIZES = ["1/0 AWG", "3/0 AWG", "4/0 AWG", "250 kcmil", "350 kcmil", "500 kcmil", "600 kcmil", "750 kcmil"];
const terminals = joints.flatMap(({ equipment }) => (equipment?.terminal === undefined ? [] : [equipment]));
const upsized: fc.Arbitrary<Joint> = fc
  .record({
    of: mixedJoint,
    equipment: fc.constantFrom(...terminals),
    frame: fc.constantFrom(undefined, "Tarnbeck 125", "Tarnbeck 200", "Tarnbeck 400", "Tarnbeck 600"),
    size: fc.constantFrom(...SIZES),
    metal: fc.constantFrom("copper" as const, "aluminum" as const),
    stranding: fc.constantFrom("class-B" as const, "compact" as const, "class-K" as const),
    loadA: fc.integer({ min: 20, max: 400 }),
    barrels: fc.constantFrom(1, 2),
  })
  .map(({ of, equipment, frame, size, metal, stranding, loadA, barrels }): Joint => {
    const { terminal, ...rest } = equipment;
    return {
      ...of,
      function: "termination",
      role: "phase",
      conductors: [{ count: 1, metal, size, stranding, insulation: "XHHW-2" }],
      circuit: { voltageV: 480, loadA, sets: 1, protection: { kind: "device", ratingA: Math.max(loadA, 20) } },
      place: { location: "dry" },
      equipment: {
        ...rest,
        terminalTemperature: { value: 75, unit: "Cel" },
        ...(frame === undefined ? {} : { frame }),
        ...(terminal === undefined
          ? {}
          : { terminal: { ...terminal, openings: terminal.openings.map((one) => ({ ...one, count: barrels })) } }),
      },
    };
  });

test("each joint of each remedy is accepted by itself, with the verdict and conditions it was given", {
  timeout: 240_000,
}, () => {
  const kinds = new Map<string, number>();
  fc.assert(
    fc.property(upsized, (joint) => {
      const found = remediesFor({ joint, basis, catalogue: items });
      for (const remedy of found.remedies) {
        kinds.set(remedy.kind, (kinds.get(remedy.kind) ?? 0) + 1);
        expect(remedy.joints.length).toBeGreaterThan(0);
        for (const one of remedy.joints) checkAgain(one);
        const priced = remedy.parts.every(({ price }) => price !== null);
        if (remedy.cost !== null) expect(priced).toBe(true);
        for (const { partNumber } of remedy.parts) expect(byPart.has(partNumber)).toBe(true);
      }
      for (const { missing } of found.open) expect(missing.length).toBeGreaterThan(0);
    }),
    { seed: SEED, numRuns: 80 },
  );
  // hand: a property shows nothing of what never occurred
  expect([...kinds.keys()].sort()).toEqual(["lug-kit", "parallel-sets", "pin-adapter", "stub"]);
});

test("every joint of the site: its remedies stand, and there are none where it is allowed as offered", {
  timeout: 120_000,
}, () => {
  let refused = 0;
  for (const joint of joints) {
    const inForce = joint.basis ?? basis;
    const { remedies } = remediesFor({ joint, basis: inForce, catalogue: items });
    for (const remedy of remedies) for (const one of remedy.joints) checkAgain(one, inForce);
    const { candidates, remedies: withThem } = candidatesFor({ joint, basis: inForce, catalogue: items });
    if (candidates.length > 0) expect(withThem).toBeNull();
    else refused += 1;
  }
  expect(refused).toBeGreaterThan(0);
});
