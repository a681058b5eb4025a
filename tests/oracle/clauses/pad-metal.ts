import type { Connector, Joint } from "@landfast/rules";
import { ask, type Case, type Objection, reject } from "../case.js";

/** Metals of bodies and pads by the words in use; "both" is a body of two metals, of which the right one is chosen on site. */
const METAL: Readonly<Record<string, "Cu" | "Al" | "Fe" | "both">> = {
  copper: "Cu",
  "copper alloy": "Cu",
  bronze: "Cu",
  brass: "Cu",
  aluminum: "Al",
  steel: "Fe",
  "stainless steel": "Fe",
  "zinc-coated steel": "Fe",
  bimetal: "both",
};
const PLATING: Readonly<Record<string, "" | "Sn" | "Ag" | "Ni">> = { none: "", tin: "Sn", silver: "Ag", nickel: "Ni" };

/** What the two faces may touch, each pair once. Aluminum bears neither copper nor silver. */
const MAY_TOUCH = new Set(
  "Cu-Cu Cu-Fe Cu-Sn Cu-Ag Cu-Ni Al-Al Al-Fe Al-Sn Al-Ni Fe-Fe Fe-Sn Fe-Ag Fe-Ni Sn-Sn Sn-Ag Sn-Ni Ag-Ag Ag-Ni Ni-Ni".split(
    " ",
  ),
);

/** 110.14 read for a tongue on a bus: every face that the lug may show is laid on every face that the pad may show. */
export function padMetal({ joint, connector }: Case): Objection[] {
  if (connector.mounting.kind !== "pad" || joint.function !== "termination") return [];
  if (connector.bodyMetal !== undefined && METAL[connector.bodyMetal] === "both") return [];
  const touching = facesOfLug(connector).flatMap((lug) => facesOfPad(joint).map((pad) => mayTouch(lug, pad)));
  if (touching.every(Boolean)) return [];
  const clause = "110.14 pad";
  return touching.some(Boolean)
    ? [ask(clause, "metals of lug and pad")]
    : [reject(clause, "aluminum on copper or silver")];
}

const mayTouch = (one: string, other: string): boolean =>
  MAY_TOUCH.has(`${one}-${other}`) || MAY_TOUCH.has(`${other}-${one}`);

function facesOfLug({ bodyMetal, plating }: Connector): readonly string[] {
  const metal = bodyMetal === undefined ? undefined : METAL[bodyMetal];
  return faces(metal === undefined ? ["Cu", "Al", "Fe"] : [metal], plating);
}

function facesOfPad(joint: Joint): readonly string[] {
  const pad = joint.equipment?.padMetal;
  return pad === undefined ? faces(["Cu", "Al", "Fe"], undefined) : faces([METAL[pad.metal] ?? ""], pad.plating);
}

function faces(metals: readonly string[], plating: string | undefined): readonly string[] {
  const plated = plating === undefined ? undefined : PLATING[plating];
  if (plated === undefined) return [...metals, "Sn", "Ag", "Ni"];
  return plated === "" ? metals : [plated];
}
