import { citationText } from "../../core/citation.js";
import type { Torque, TorqueInUnits } from "../../core/quantity.js";
import type { TorqueAnswer } from "./torque-answer.js";

/** "275 lbf-in (22.9 lbf-ft, 31.1 N-m)": the printed unit first, then the two others. */
export function torqueText(torque: TorqueInUnits): string {
  const { printed } = torque;
  const lbfIn = `${String(torque.lbfIn)} lbf-in`;
  const lbfFt = `${String(torque.lbfFt)} lbf-ft`;
  const newtonMetre = `${String(torque.newtonMetre)} N-m`;
  if (printed.unit === "lbf-in") return `${lbfIn} (${lbfFt}, ${newtonMetre})`;
  return printed.unit === "lbf-ft" ? `${lbfFt} (${lbfIn}, ${newtonMetre})` : `${newtonMetre} (${lbfIn}, ${lbfFt})`;
}

/** "275 lbf-in": as printed. */
export function printedText(printed: Torque): string {
  return `${String(printed.value)} ${printed.unit}`;
}

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
