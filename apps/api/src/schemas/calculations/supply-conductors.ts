import { CONDUCTOR_METALS, type SupplyConductors as SupplyConductorsFacts } from "@landfast/rules";
import { enumOf } from "../enum-of.js";
import { Size } from "../quantity.js";
import { count } from "./amount.js";
import { strictly } from "./question-form.js";

/** The largest ungrounded conductor of a supply, and the sets in parallel. */
export const SupplyConductors = strictly<SupplyConductorsFacts>(
  { size: Size, metal: enumOf(CONDUCTOR_METALS), sets: count("sets in parallel", 100) },
  {
    $id: "SupplyConductors",
    description:
      'the largest ungrounded conductor and the sets in parallel: {"size": "500 kcmil", "metal": "copper", "sets": 2}',
  },
);
