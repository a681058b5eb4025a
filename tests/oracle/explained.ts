/**
 * Differences that are understood: the library is the stricter of the two, or one asks where the other can tell. In none of
 * them does the library accept. Each says how often it may happen, about twice what was seen, so that another seed passes
 * and a new kind of difference does not.
 */
import type { Judgment } from "./oracle.js";

export interface Explained {
  readonly library: Judgment["verdict"];
  readonly oracle: Judgment["verdict"];
  /** The library's rules where it is the stricter one, the oracle's clauses where the oracle is. */
  readonly about: readonly string[];
  readonly because: string;
  readonly perThousand: number;
}

const LIBRARY_REJECTS: readonly Explained[] = (["accept", "needs-information"] as const).flatMap((oracle) => [
  {
    library: "reject",
    oracle,
    about: ["device-protection"],
    because:
      "the library gives no next standard rating to a conductor that leaves a tap, although a device is ahead of it",
    perThousand: 3,
  },
  {
    library: "reject",
    oracle,
    about: ["terminal-temperature", "device-protection"],
    because:
      "the library takes 60 C for a conductor up to 1 AWG on an unmarked terminal, the oracle goes by the terminal's range",
    perThousand: 1,
  },
  {
    library: "reject",
    oracle,
    about: ["aluminum-in-earth"],
    because: "the library keeps aluminum bonding jumpers out of earth and concrete too, not only electrode conductors",
    perThousand: 3,
  },
  {
    library: "reject",
    oracle,
    about: ["electrode-connection", "aluminum-in-earth"],
    because:
      "the library holds the mold of a weld to the electrodes it is named for, as it does a clamp, and to where one can be",
    perThousand: 1,
  },
  {
    library: "reject",
    oracle,
    about: ["equipment-ground-size", "place-listing"],
    because:
      "the library limits a ground to the size of the phases only where these were raised, and not by the conductors of a tap",
    perThousand: 6,
  },
  {
    library: "reject",
    oracle,
    about: ["feeder-tap"],
    because: "the library wants every tap protected from damage, also one that stays in its enclosure",
    perThousand: 2,
  },
  {
    library: "reject",
    oracle,
    about: ["feeder-tap", "terminal-temperature"],
    because: "the library also asks whether the insulation of the run of a feeder tap is one for the place",
    perThousand: 0.5,
  },
  {
    library: "reject",
    oracle,
    about: ["place-listing"],
    because: "the library lets a burial listing stand for concrete only with clamps",
    perThousand: 0.5,
  },
  {
    library: "reject",
    oracle,
    about: ["connector-function"],
    because:
      "the library keeps a neutral bar for neutrals and a clamp for electrodes, the oracle only load current off grounding parts",
    perThousand: 0.5,
  },
  {
    library: "reject",
    oracle,
    about: ["stud-and-holes"],
    because: "the library compares the bolts of a pair of lugs with those of the equipment even in a splice",
    perThousand: 0.5,
  },
]);

const LIBRARY_ASKS: readonly Explained[] = [
  {
    library: "needs-information",
    oracle: "accept",
    about: ["terminal-temperature", "feeder-tap", "device-protection"],
    because:
      "the library wants the load, and the rating of every terminal; the oracle sees that no load the device allows is too large",
    perThousand: 10,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["voltage-rating", "terminal-temperature", "device-protection", "feeder-tap"],
    because: "the library wants the voltage rating of bare connectors too",
    perThousand: 6,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["electrode-connection"],
    because: "the library wants the grounding listing of a weld; 250.70 names welding apart from listed parts",
    perThousand: 1.5,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["torque-source", "device-protection"],
    because: "a slotted hexagonal head with one of its two annex values: the library wants both",
    perThousand: 0.5,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["parallel-legs", "terminal-temperature"],
    because: "leads of equipment in parallel: the library does not take them for the legs of the circuit",
    perThousand: 0.5,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["aluminum-in-earth"],
    because: "the library asks where an aluminum bonding jumper lies, as it does for an electrode conductor",
    perThousand: 0.5,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["place-listing"],
    because: "place not known: a grounding part for burial serves everywhere for the oracle",
    perThousand: 0.5,
  },
  {
    library: "needs-information",
    oracle: "accept",
    about: ["bending-space"],
    because: "the library compares the wires per terminal with those that lie in the opening",
    perThousand: 0.5,
  },
];

const ACCESS_ASKS: readonly Explained[] = [
  {
    library: "needs-information",
    oracle: "accept",
    about: ["accessible-joint", "electrode-connection"],
    because:
      "pressed or welded in the earth to an electrode that is not given: every electrode may be hidden there, steel on a condition that the library asks for by the electrode",
    perThousand: 1,
  },
];

/** What both refuse to accept, one with a question and the other with an answer. */
const BOTH_REFUSE: readonly Explained[] = [
  {
    library: "needs-information",
    oracle: "reject",
    about: ["110.14(A) strands"],
    because: "solid, compressed and compact under an unmarked range: the library asks for a listing that names them",
    perThousand: 4,
  },
  {
    library: "needs-information",
    oracle: "reject",
    about: ["110.14(B) place"],
    because: "a part for the inside of enclosures in a wet place: the library asks for the place inside",
    perThousand: 3,
  },
];

export const EXPLAINED: readonly Explained[] = [...LIBRARY_REJECTS, ...LIBRARY_ASKS, ...ACCESS_ASKS, ...BOTH_REFUSE];

/** Two reasons to refuse at once, where each of the two sides leads with another: how many in a thousand joints. */
export const MIXED_REFUSALS_PER_THOUSAND = 4;
