import { type Citation, COMMON_PRACTICE } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import type { AluminumAmendment, Joint } from "../../core/joint.js";
import type { JointSubject } from "../../core/rule.js";
import type { PreparationAnswer } from "./preparation-answer.js";

/** What the preparation hangs on: aluminum at the surface, a copper skin over aluminum, or copper alone. */
export type Surface = "aluminum" | "copper-clad" | "copper";

/** The surface that asks for most among the joint's conductors. */
export function surfaceOf({ conductors }: Joint): Surface {
  let surface: Surface = "copper";
  for (const { metal } of conductors) {
    if (metal === "aluminum") return "aluminum";
    if (metal === "copper-clad-aluminum") surface = "copper-clad";
  }
  return surface;
}

/**
 * How the conductors are made ready before they are landed.
 *
 * Aluminum is covered by an oxide that insulates and forms at once, so its strands are brushed bright; the NFPA 70 asks
 * for neither brush nor compound in so many words. 110.14 asks that a compound, where one is used, suits and does no
 * harm; 110.3(B) makes the connector's instructions binding (2017, 2020, 2023). So the compound follows the
 * instructions and the brush is common practice.
 * Worked: 4/0 AWG aluminum in a lug whose instructions say nothing known: brush, compound per the instructions.
 * Copper-clad aluminum shows copper at its surface: it is not brushed through, and its compound follows the instructions.
 * A local amendment may ask for the brush, and for compound whatever the instructions say, or unless the connector is marked
 * for use without; it is taken as the job states it, and never guessed from a place.
 * A piercing connector is pressed through the insulation, which stays on: there is nothing to brush.
 */
export function preparation({ joint, connector }: JointSubject, edition: Edition): PreparationAnswer {
  const surface = surfaceOf(joint);
  const piercing = connector.construction === "insulation-piercing";
  const brush = brushFor(surface, piercing);
  const compound = compoundFor(surface, connector.compound);
  const local = localAmendment(joint);
  if (local !== undefined) return amended(local, brush, compound, piercing, connector.compound, edition);
  return {
    brush: { needed: brush.needed, because: brush.because, level: "trade-practice", cite: COMMON_PRACTICE },
    compound: {
      need: compound.need,
      because: compound.because,
      level: "connector-marking",
      cite: edition.clauses.instructions,
    },
  };
}

/** What a jurisdiction asks of the aluminum in this joint. */
export interface LocalAmendment {
  readonly asks: AluminumAmendment;
  readonly cite: Citation;
}

/** Undefined where no amendment is stated, or none of the conductors is one that it is for. */
export function localAmendment({ basis, conductors }: Joint): LocalAmendment | undefined {
  const jurisdiction = basis?.jurisdiction;
  const asks = jurisdiction?.aluminum;
  if (jurisdiction === undefined || asks === undefined) return undefined;
  // Stranding that is not known may be stranded, so that the stricter reading holds.
  const meant = conductors.some(
    ({ metal, stranding }) =>
      metal === "aluminum" && (asks.conductors === "all" || (stranding !== "solid" && stranding !== "iec-class-1")),
  );
  return meant
    ? { asks, cite: { standard: jurisdiction.name, edition: "", locator: jurisdiction.amendment } }
    : undefined;
}

function amended(
  { asks, cite }: LocalAmendment,
  brush: { readonly needed: boolean; readonly because: string },
  compound: CompoundNeed,
  piercing: boolean,
  stated: "required" | "pre-filled" | "not-needed" | undefined,
  edition: Edition,
): PreparationAnswer {
  const brushed = asks.brush === "required" && !piercing;
  const compounded =
    stated !== "pre-filled" &&
    (asks.compound === "required" || (asks.compound === "required-unless-marked" && stated !== "not-needed"));
  return {
    brush: brushed
      ? { needed: true, because: "a local amendment asks for it", level: "local-amendment", cite }
      : { needed: brush.needed, because: brush.because, level: "trade-practice", cite: COMMON_PRACTICE },
    compound: compounded
      ? {
          need: "required",
          because: "a local amendment asks for oxide-inhibiting compound",
          level: "local-amendment",
          cite,
        }
      : {
          need: compound.need,
          because: compound.because,
          level: "connector-marking",
          cite: edition.clauses.instructions,
        },
  };
}

function brushFor(surface: Surface, piercing: boolean): { readonly needed: boolean; readonly because: string } {
  if (surface === "copper") return NO_BRUSH_COPPER;
  if (surface === "copper-clad") return NO_BRUSH_CLAD;
  return piercing ? NO_BRUSH_PIERCING : BRUSH_ALUMINUM;
}

const NO_BRUSH_COPPER = { needed: false, because: "copper needs only a clean surface" } as const;
const NO_BRUSH_CLAD = { needed: false, because: "the surface is copper and must not be scraped through" } as const;
const NO_BRUSH_PIERCING = { needed: false, because: "the insulation stays on; the teeth go through it" } as const;
const BRUSH_ALUMINUM = {
  needed: true,
  because: "aluminum oxide insulates and forms at once on a bare surface",
} as const;

type CompoundNeed = Pick<PreparationAnswer["compound"], "need" | "because">;

function compoundFor(surface: Surface, stated: "required" | "pre-filled" | "not-needed" | undefined): CompoundNeed {
  if (surface === "copper") return stated === undefined ? COPPER_ALONE : COPPER_STATED[stated];
  return stated === undefined ? NOT_STATED : STATED[stated];
}

const STATED: Readonly<Record<"required" | "pre-filled" | "not-needed", CompoundNeed>> = {
  required: { need: "required", because: "the connector's instructions ask for oxide-inhibiting compound" },
  "pre-filled": { need: "pre-filled", because: "the connector comes filled with compound; leave it in" },
  "not-needed": { need: "not-needed", because: "the connector's instructions say that none is needed" },
};
const NOT_STATED: CompoundNeed = {
  need: "per-instructions",
  because: "what the connector's instructions say of compound is not known here; the code itself does not ask for it",
};
const COPPER_ALONE: CompoundNeed = { need: "not-needed", because: "oxide-inhibiting compound is for aluminum" };
const COPPER_STATED: Readonly<Record<"required" | "pre-filled" | "not-needed", CompoundNeed>> = {
  required: {
    need: "per-instructions",
    because: "the instructions ask for compound; see whether they ask it for copper too",
  },
  "pre-filled": STATED["pre-filled"],
  "not-needed": STATED["not-needed"],
};
