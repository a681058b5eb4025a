import { citationText } from "../../core/citation.js";
import { printedText } from "../../core/torque-words.js";
import type { TorqueAnswer } from "./torque-answer.js";

/** "275 lbf-in at the conductor screw of opening barrel, 3/0 AWG, Informative Annex I Table I.3, NFPA 70-2023". */
export function answerText({ at, torque, method, level, cite, alternative }: Omit<TorqueAnswer, "steps">): string {
  if (torque === null) return `${method.replaceAll("-", " ")} at the ${at}`;
  const source =
    level === "equipment-marking"
      ? "marked on the equipment"
      : level === "connector-marking"
        ? "marked on the connector"
        : citationText(cite);
  const way = alternative === null ? "" : ` if ${alternative}`;
  return `${printedText(torque.printed)} at the ${at}${way}, ${source}`;
}
