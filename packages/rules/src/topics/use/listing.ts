import type { ConductorGroup } from "../../core/conductor.js";
import { compareSizes, parseSize, sizeOf } from "../../core/conductor-size.js";
import { conductorWords } from "../../core/conductor-words.js";
import { asking, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "listing";
const SPLICING_WIRE_CONNECTORS = "UL 486C";
const LARGEST = sizeOf("6 AWG");
const LARGEST_SOLID_ALUMINUM = sizeOf("10 AWG");

/**
 * Is the connector listed, under a standard whose scope covers these conductors?
 *
 * NFPA 70 110.3(B) (2017, 2020, 2023), in our words: listed parts are used as they are listed. A part whose listing is
 * not stated cannot be judged. UL 486C covers splicing wire connectors for 6 AWG and smaller, of aluminum 12 and 10 AWG
 * solid and 12 to 6 AWG stranded (scope, from memory).
 * Worked: 4 AWG copper in a connector listed under UL 486C alone: 41.74 kcmil <= 26.24 kcmil does not hold, refused.
 * Silent: the scopes of the other standards are wider than the ranges that their parts bear.
 */
export const listing: Rule = {
  id: ID,
  title: "Listing of the connector",
  clauses: ["instructions", "listedConnectors"],
  needs: ["connector/listings", "joint/conductors/0/size"],
  cannotSee: "whether the part bears the mark of the laboratory",
  check({ joint, connector, origin }, edition) {
    const cite = edition.clauses.instructions;
    const worksheet = new Worksheet();
    const required = "listed for this use";
    const [first, second] = connector.listings;
    if (first === undefined)
      return asking(ID, worksheet, `${origin}/listings`, "Under which standard the connector is listed is not known.", {
        cite,
        required,
      });
    const standards = connector.listings.map(({ standard }) => standard);
    const listed = worksheet.given("listed under", standards, `${origin}/listings`);
    const offered = standards.join(", ");
    if (first.standard === SPLICING_WIRE_CONNECTORS && second === undefined) {
      const group = joint.conductors.findIndex(isOutsideScope);
      const conductor = joint.conductors[group];
      if (conductor !== undefined) {
        const size = worksheet.given("size of the conductor", conductor.size, `joint/conductors/${String(group)}/size`);
        worksheet.conclude(
          "the standard covers the conductor",
          "fail",
          [listed, size],
          "it covers 6 AWG and smaller; of aluminum 12 and 10 AWG solid and 12 to 6 AWG stranded",
          edition.clauses.listedConnectors,
        );
        return settled(ID, worksheet, {
          sentence: `The connector is listed under ${SPLICING_WIRE_CONNECTORS} alone, which does not cover ${conductorWords(conductor)}.`,
          cite,
          required: `a listing that covers ${conductor.size}`,
          offered,
          fix: "a connector listed under UL 486A-486B for this size",
        });
      }
    }
    worksheet.conclude("the connector is listed", "pass", [listed], "its listing is stated", cite);
    return settled(ID, worksheet, {
      sentence: `The connector is listed under ${offered}.`,
      cite,
      required,
      offered,
    });
  },
};

/** Sizes in another system are left to the rule for the listed range. */
function isOutsideScope({ metal, size, stranding }: ConductorGroup): boolean {
  const parsed = parseSize(size);
  if ("problem" in parsed || parsed.series !== "awg-kcmil") return false;
  const largest = metal === "aluminum" && stranding === "solid" ? LARGEST_SOLID_ALUMINUM : LARGEST;
  return compareSizes(parsed, largest) > 0;
}
