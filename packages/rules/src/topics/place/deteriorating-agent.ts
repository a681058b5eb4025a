import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "deteriorating-agent";

/**
 * Does the connector withstand what attacks metal at its place?
 *
 * NFPA 70 110.11 and 300.6 (2017, 2020, 2023). Our words: where gases, fumes, vapors, liquids or other agents wear metal
 * away, the part is one identified for them. "Identified" is taken as: the listing or the maker's statement names the
 * agent.
 * Worked: a wet well with hydrogen sulfide and a lug of which nothing is stated: asked about; a lug stated for salt air
 * only: refused.
 * Silent: the text names no default for a part of which nothing is stated, and gives no list of metals that serve.
 */
export const deterioratingAgent: Rule = {
  id: ID,
  title: "Resistance to what attacks the metal",
  clauses: ["deterioratingAgents", "corrosion"],
  needs: ["joint/place/deterioratingAgent", "connector/withstands"],
  cannotSee: "an agent that nobody named, and how strong it is",
  check({ joint, connector, origin }, edition) {
    const agent = joint.place?.deterioratingAgent;
    if (agent === undefined) return notApplicable(ID, "nothing that attacks metal is named at this place");
    const cite = edition.clauses.deterioratingAgents;
    const worksheet = new Worksheet();
    const named = worksheet.given("what attacks metal at the place", agent, "joint/place/deterioratingAgent");
    worksheet.state("the part must be protected against it", true, edition.clauses.corrosion, undefined, [named]);
    const required = `stated to withstand ${agent}`;
    const { withstands } = connector;
    if (withstands === undefined)
      return asking(
        ID,
        worksheet,
        `${origin}/withstands`,
        `Nothing is stated about the connector in ${agent}; ask the maker for a statement or choose a part that has one.`,
        { cite, required, offered: "nothing stated" },
      );
    const stated = worksheet.given("agents the connector is stated to withstand", withstands, `${origin}/withstands`);
    const holds = worksheet.compare("the agent is among them", named, "in", stated, cite);
    const offered = withstands.length === 0 ? "stated for no agent" : `stated for ${withstands.join(", ")}`;
    return settled(ID, worksheet, {
      sentence: holds
        ? `The connector is stated to withstand ${agent}.`
        : `The place has ${agent}; the connector is ${offered}.`,
      cite,
      required,
      offered,
      fix: `a connector stated to withstand ${agent}, or move the joint out of it`,
    });
  },
};
