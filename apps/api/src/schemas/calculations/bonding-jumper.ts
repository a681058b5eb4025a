import { BONDING_JUMPERS, type BondingJumperQuestion, CONDUCTOR_METALS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { ref } from "../ref.js";
import { amount, count } from "./amount.js";
import { AMPERES_MAX } from "./circuit-load.js";
import { type QuestionForm, strictly } from "./question-form.js";
import { SupplyConductors } from "./supply-conductors.js";

export const bondingJumper: QuestionForm<"bonding-jumper"> = {
  question: strictly<BondingJumperQuestion>({
    kind: enumOf(BONDING_JUMPERS),
    metal: enumOf(CONDUCTOR_METALS),
    supply: Type.Optional(ref(SupplyConductors)),
    equivalentSupply: Type.Optional(ref(SupplyConductors)),
    racewaysBondedApart: Type.Optional(count("raceways that each have a jumper of their own", 100)),
    deviceA: Type.Optional(amount("the device ahead", "amperes", AMPERES_MAX)),
  }),
  example: { kind: "main", metal: "copper", supply: { size: "500 kcmil", metal: "copper", sets: 2 } },
};
