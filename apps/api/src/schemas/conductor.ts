import { CONDUCTOR_METALS, INSULATIONS, STRANDINGS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { Size, Temperature } from "./quantity.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";

/** Equal conductors that meet in one joint. */
export const ConductorGroup = strict(
  {
    count: Type.Integer({
      minimum: 1,
      maximum: 100,
      description: "how many meet in one joint: a whole number from 1 to 100",
    }),
    metal: enumOf(CONDUCTOR_METALS),
    size: Size,
    stranding: enumOf(STRANDINGS),
    strands: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 100_000,
        description:
          'how many strands were counted, a whole number from 1 to 100000: tells the class where stranding is "unknown"',
      }),
    ),
    insulation: enumOf(INSULATIONS),
    insulationRating: Type.Optional(ref(Temperature)),
    duty: Type.Optional(enumOf(["run", "tap"] as const)),
    uncut: Type.Optional(Type.Boolean()),
  },
  { $id: "ConductorGroup" },
);
