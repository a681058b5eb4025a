import { citationText } from "../../core/citation.js";
import { printedText } from "../../core/torque-words.js";
import type { TorqueAnswer } from "./torque-answer.js";

/** "275 lbf-in at the conductor screw of opening barrel, 3/0 AWG, Informative Annex I Table I.3, NFPA 70-2023". */
export function answerText({ at, torque, method, level, cite, alternative }: Omit<TorqueAnswer, "steps">): string {
  const value = torque === null ? METHOD_TEXT[method] : printedText(torque.printed);
  const source =
    level === "equipment-marking"
      ? "marked on the equipment"
      : level === "connector-marking"
        ? "marked on the connector"
        : citationText(cite);
  const way = alternative === null ? "" : ` if ${alternative}`;
  return torque === null ? `${value} at the ${at}` : `${value} at the ${at}${way}, ${source}`;
}

const METHOD_TEXT: Readonly<Record<TorqueAnswer["method"], string>> = {
  torque: "torque",
  "breakaway-head": "breakaway head",
  "by-hand": "by hand",
  crimp: "crimp",
  weld: "weld",
  spring: "spring",
  "see-instructions": "see the instructions",
};
