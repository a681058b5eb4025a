import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "grounding-connection";

/**
 * Is a grounding or bonding conductor connected by a means that the code names?
 *
 * NFPA 70 250.8(A) (2017, 2020, 2023), in our words: by listed pressure connectors, terminal bars, pressure connectors
 * listed as grounding and bonding equipment, exothermic welding, or parts of a listed assembly.
 * Worked: a lug listed to UL 467 or UL 486A-486B serves; one of which no listing is known is asked about.
 * Silent: machine screws into enclosures and other listed means; solder alone is not among the parts that can be
 * described here.
 */
export const groundingConnection: Rule = {
  id: ID,
  title: "Means of connecting grounding and bonding conductors",
  clauses: ["groundingMethods"],
  needs: ["connector/construction", "connector/listings"],
  cannotSee: "paint and coatings under the connection",
  check({ joint, connector, origin }, edition) {
    if (joint.role === "phase" || joint.role === "neutral")
      return notApplicable(ID, "the conductor is no grounding or bonding conductor");
    const cite = edition.clauses.groundingMethods;
    const worksheet = new Worksheet();
    const required = "a listed connector, terminal bar or weld";
    const construction = worksheet.given("how the connector holds", connector.construction, `${origin}/construction`);
    if (connector.construction === "weld") {
      worksheet.conclude(
        "the means of connection is allowed",
        "pass",
        [construction],
        "exothermic welding is named",
        cite,
      );
      return settled(ID, worksheet, {
        sentence: "The conductor is welded, which the code names as a means.",
        cite,
        required,
        offered: "weld",
      });
    }
    if (connector.listings.length === 0)
      return asking(
        ID,
        worksheet,
        `${origin}/listings`,
        "No listing of the connector is known, and grounding conductors are connected by listed means.",
        { cite, required },
      );
    const standards = connector.listings.map(({ standard }) => standard);
    const listed = worksheet.given("listings of the connector", standards, `${origin}/listings`);
    worksheet.conclude(
      "the means of connection is allowed",
      "pass",
      [construction, listed],
      "listed connectors and assemblies are named",
      cite,
    );
    return settled(ID, worksheet, {
      sentence: `The connector is listed (${standards.join(", ")}), a means the code names for grounding conductors.`,
      cite,
      required,
      offered: `listed, ${standards.join(", ")}`,
    });
  },
};
