/** A selection remembers what the rules said to other joints and connectors; here it is compared with asking each anew. */
import { demoCatalogue, larkfenOpenJob } from "@landfast/data";
import { selectConnectors } from "@landfast/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyBasis, mixedCatalogue, mixedJoint } from "./mixed-joints.js";
import { plainSelection } from "./plain-selection.js";

/** Fixed, so that a failure can be seen again. */
const SEED = 20_261_125;

describe("selections are those of the full check of every connector", () => {
  test("for every fifth joint of the site, with the whole catalogue: the same bytes", { timeout: 120_000 }, () => {
    const { items } = demoCatalogue();
    const { basis: ofJob, joints } = larkfenOpenJob();
    for (const joint of joints.filter((_, at) => at % 5 === 0)) {
      const basis = joint.basis ?? ofJob;
      expect(JSON.stringify(selectConnectors({ joint, basis, catalogue: items }))).toBe(
        JSON.stringify(plainSelection(joint, basis, items)),
      );
    }
  });
  test("for joints and catalogues mixed at random, one joint after another with the same catalogue", {
    timeout: 240_000,
  }, () => {
    const seen = { chosen: 0, none: 0, asked: 0, excluded: new Set<string>() };
    fc.assert(
      fc.property(
        mixedCatalogue,
        fc.array(mixedJoint, { minLength: 1, maxLength: 8 }),
        anyBasis,
        (catalogue, joints, basis) => {
          for (const joint of joints) {
            const found = selectConnectors({ joint, basis, catalogue });
            expect(JSON.stringify(found)).toBe(JSON.stringify(plainSelection(joint, basis, catalogue)));
            if (found.selection.chosen !== null) seen.chosen += 1;
            else if (found.finding?.verdict === "needs-information") seen.asked += 1;
            else seen.none += 1;
            for (const { rule } of found.selection.excluded) seen.excluded.add(rule);
          }
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
    // hand: a comparison shows nothing unless there was something to choose, to refuse and to ask
    expect(Math.min(seen.chosen, seen.none, seen.asked)).toBeGreaterThan(20);
    expect(seen.excluded.size).toBeGreaterThan(15);
  });
});
