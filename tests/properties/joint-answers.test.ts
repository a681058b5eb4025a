/** What must hold for every joint, on joints varied from the demonstration site. */
import { demoCatalogue, larkfenJob } from "@landfast/data";
import {
  type CatalogueItem,
  type ConductorGroup,
  type Connector,
  checkJoint,
  type Joint,
  type JointFinding,
  type Verdict,
} from "@landfast/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const job = larkfenJob();
const items = demoCatalogue().items;
const byPart = new Map<string, CatalogueItem>(items.map((item) => [item.partNumber, item]));

interface Offered {
  readonly joint: Joint;
  readonly connector: Connector | CatalogueItem;
  readonly origin: "catalogue" | "equipment";
}

const offered: readonly Offered[] = job.joints.flatMap((joint): Offered[] => {
  const choice = joint.connector;
  if (choice !== undefined && "partNumber" in choice) {
    const connector = byPart.get(choice.partNumber);
    return connector === undefined ? [] : [{ joint, connector, origin: "catalogue" }];
  }
  const connector = joint.equipment?.terminal;
  return connector === undefined ? [] : [{ joint, connector, origin: "equipment" }];
});

const ask = ({ joint, connector, origin }: Offered): JointFinding =>
  checkJoint({ joint, basis: joint.basis ?? job.basis, connector, origin });
const accepts = (verdict: Verdict): boolean => verdict === "accept" || verdict === "accept-with-conditions";
/** Fixed, so that a failure can be seen again. */
const SEED = 20_261_125;
const anyOffer = fc.constantFrom(...offered);

describe("properties of every answer", () => {
  test("more load never turns a refusal into an acceptance", () => {
    fc.assert(
      fc.property(
        anyOffer,
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 0, max: 2000 }),
        (offer, loadA, more) => {
          const { circuit } = offer.joint;
          if (circuit?.loadA === undefined) return;
          const at = (load: number): JointFinding =>
            ask({ ...offer, joint: { ...offer.joint, circuit: { ...circuit, loadA: load } } });
          if (accepts(at(loadA + more).verdict)) expect(accepts(at(loadA).verdict)).toBe(true);
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
  });

  test("a lower rating of the terminals never turns a refusal into an acceptance", () => {
    fc.assert(
      fc.property(anyOffer, fc.constantFrom([75, 60], [90, 75], [90, 60]), (offer, [high = 0, low = 0]) => {
        const { circuit, equipment } = offer.joint;
        if (circuit === undefined || equipment === undefined) return;
        const at = (value: number): JointFinding => {
          const terminalTemperature = { value, unit: "Cel" } as const;
          return ask({
            ...offer,
            joint: {
              ...offer.joint,
              circuit: { ...circuit, endTerminalTemperature: terminalTemperature },
              equipment: { ...equipment, terminalTemperature },
            },
          });
        };
        if (accepts(at(low).verdict)) expect(accepts(at(high).verdict)).toBe(true);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("the order of conductors, openings and listings does not change the verdict", () => {
    fc.assert(
      fc.property(anyOffer, (offer) => {
        const turned: Offered = {
          ...offer,
          joint: { ...offer.joint, conductors: [...offer.joint.conductors].reverse() },
          connector: {
            ...offer.connector,
            openings: [...offer.connector.openings].reverse(),
            listings: [...offer.connector.listings].reverse(),
          },
        };
        expect(ask(turned).verdict).toBe(ask(offer).verdict);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("taking a fact away never turns a refusal or a question into an acceptance", () => {
    // The state of the part is not among them: left out, "use a new part" becomes a condition.
    const facts = ["place", "circuit", "equipment", "grounding", "upsizing"] as const;
    fc.assert(
      fc.property(anyOffer, fc.constantFrom(...facts), (offer, fact) => {
        const whole = ask(offer);
        const less: Joint = Object.fromEntries(Object.entries(offer.joint).filter(([key]) => key !== fact)) as never;
        const without = ask({ ...offer, joint: less });
        if (accepts(whole.verdict)) return;
        // What is left out may have been the very thing refused: then the rule has nothing left to refuse.
        const gone = whole.findings.filter(({ outcome }) => outcome !== "pass").map(({ rule }) => rule);
        const still = without.findings.filter(({ outcome }) => outcome !== "pass").map(({ rule }) => rule);
        const silenced = gone.every((rule) => without.notApplicable.some((one) => one.rule === rule));
        expect(still.length > 0 || silenced).toBe(true);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("a stranding that is not known is never accepted where it was not", () => {
    fc.assert(
      fc.property(anyOffer, (offer) => {
        const unknown = (group: ConductorGroup): ConductorGroup => ({ ...group, stranding: "unknown" });
        const finding = ask({ ...offer, joint: { ...offer.joint, conductors: offer.joint.conductors.map(unknown) } });
        expect(accepts(finding.verdict)).toBe(false);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  test("one temperature in two units gives one verdict, and an answer survives JSON", () => {
    fc.assert(
      fc.property(anyOffer, (offer) => {
        const finding = ask(offer);
        expect(JSON.parse(JSON.stringify(finding))).toEqual(finding);
        const { equipment } = offer.joint;
        const rated = equipment?.terminalTemperature;
        if (equipment === undefined || rated === undefined || rated === "unmarked") return;
        const inFahrenheit = { value: (rated.value * 9) / 5 + 32, unit: "degF" } as const;
        const again = ask({
          ...offer,
          joint: { ...offer.joint, equipment: { ...equipment, terminalTemperature: inFahrenheit } },
        });
        expect(again.verdict).toBe(finding.verdict);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});
