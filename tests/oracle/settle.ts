/**
 * Unknown facts are settled by trying everything they may turn out to be: one question becomes all the questions that it
 * may stand for. Facts without a list of possible values stay open; the clauses ask for them.
 */
import {
  type Basis,
  type Connector,
  ELECTRODES,
  type Joint,
  LOCATIONS,
  type Opening,
  type Stranding,
} from "@landfast/rules";
import { type Case, conductorCount } from "./case.js";
import { isBlock } from "./clauses/distribution-block.js";
import { EVERY_MARK, markOf } from "./clauses/metals.js";
import { formsToTry } from "./clauses/strand-count.js";
import { areaOf } from "./read-table.js";

interface Question {
  readonly joint: Joint;
  readonly connector: Connector;
  readonly basis: Basis;
  readonly ownTerminal: boolean;
}

type Ways = (question: Question) => readonly Question[];

const EQUIPMENT_TEMPERATURES = [60, 75, 90].map((value) => ({ value, unit: "Cel" }) as const);
const GAUGE_STRANDS: readonly Stranding[] = [
  "solid",
  "class-B",
  "class-C",
  "class-D",
  "compressed",
  "compact",
  "class-G",
  "class-H",
  "class-I",
  "class-K",
  "class-M",
];
const METRIC_STRANDS: readonly Stranding[] = ["iec-class-1", "iec-class-2", "iec-class-5", "iec-class-6"];

const withJoint = (question: Question, change: Partial<Joint>): Question => ({
  ...question,
  joint: { ...question.joint, ...change },
});
const withConnector = (question: Question, change: Partial<Connector>): Question => ({
  ...question,
  connector: { ...question.connector, ...change },
});
const equipmentWith = (question: Question, change: Partial<NonNullable<Joint["equipment"]>>): Question =>
  withJoint(question, { equipment: { tag: "", ...question.joint.equipment, ...change } });

const place: Ways = (question) => {
  if (question.joint.place !== undefined) return [question];
  // 300.5(B): the inside of a handhole is wet, and it is neither earth nor concrete.
  const possible = question.joint.equipment?.kind === "handhole" ? (["wet"] as const) : LOCATIONS;
  return possible.map((location) => withJoint(question, { place: { location } }));
};

/** Where the strands were counted, the forms of that count; one that is stated otherwise stays possible too. */
const countedStrands: Ways = (question) => {
  let questions: readonly Question[] = [question];
  for (const [index, group] of question.joint.conductors.entries()) {
    if (group.strands === undefined) continue;
    const forms = formsToTry(group);
    if (forms.length === 0) continue;
    questions = questions.flatMap((one) =>
      forms.map((stranding) =>
        withJoint(one, { conductors: one.joint.conductors.with(index, { ...group, stranding }) }),
      ),
    );
  }
  return questions;
};

const strands: Ways = (question) => {
  const index = question.joint.conductors.findIndex(({ stranding }) => stranding === "unknown");
  const group = question.joint.conductors[index];
  if (group === undefined) return [question];
  const forms = areaOf(group.size).system === "awg" ? GAUGE_STRANDS : METRIC_STRANDS;
  return forms.flatMap((stranding) =>
    strands(withJoint(question, { conductors: question.joint.conductors.with(index, { ...group, stranding }) })),
  );
};

/** In a tap some conductor runs through and some other one leaves; which, is tried. */
const duties: Ways = (question) => {
  if (question.joint.function !== "tap") return [question];
  const every = everyDuty(question);
  const taps = every.filter(({ joint }) =>
    (["run", "tap"] as const).every((duty) => joint.conductors.some((group) => group.duty === duty)),
  );
  return taps.length > 0 ? taps : [question];
};

function everyDuty(question: Question): readonly Question[] {
  const index = question.joint.conductors.findIndex(({ duty }) => duty === undefined);
  const group = question.joint.conductors[index];
  if (group === undefined) return [question];
  return (["run", "tap"] as const).flatMap((duty) =>
    everyDuty(withJoint(question, { conductors: question.joint.conductors.with(index, { ...group, duty }) })),
  );
}

const mark: Ways = (question) =>
  question.connector.metalMarking === undefined
    ? EVERY_MARK.map((metalMarking) => withConnector(question, { metalMarking }))
    : [question];

const currentCarrying = ({ joint }: Question): boolean => joint.role === "phase" || joint.role === "neutral";

const connectorTemperature: Ways = (question) => {
  const { connector, ownTerminal } = question;
  if (!currentCarrying(question) || connector.temperature !== undefined || ownTerminal) return [question];
  if ((markOf(connector)?.ratingC ?? null) !== null) return [question];
  return EQUIPMENT_TEMPERATURES.map((temperature) => withConnector(question, { temperature }));
};

const terminalTemperature: Ways = (question) => {
  const { joint } = question;
  if (!currentCarrying(question)) return [question];
  if (joint.function === "termination")
    return joint.equipment?.terminalTemperature === undefined
      ? EQUIPMENT_TEMPERATURES.map((each) => equipmentWith(question, { terminalTemperature: each }))
      : [question];
  const { circuit } = joint;
  if (circuit === undefined || circuit.endTerminalTemperature !== undefined) return [question];
  return EQUIPMENT_TEMPERATURES.map((each) =>
    withJoint(question, { circuit: { ...circuit, endTerminalTemperature: each } }),
  );
};

const openingCount: Ways = (question) => {
  const { openings } = question.connector;
  const index = openings.findIndex(
    ({ conductorsMax, combinations }) => conductorsMax === undefined && combinations === undefined,
  );
  const opening = openings[index];
  const count = conductorCount(question.joint);
  if (opening === undefined || count < 2) return [question];
  const settled = (conductorsMax: number): Opening => ({ ...opening, conductorsMax });
  // Either one, as without any mark, or as many as there are: what lies between follows.
  return [1, count].flatMap((most) =>
    openingCount(withConnector(question, { openings: openings.with(index, settled(most)) })),
  );
};

const legs: Ways = (question) => {
  const { circuit } = question.joint;
  if (circuit === undefined || circuit.sets < 2 || circuit.parallelLegsAlike !== undefined) return [question];
  return [true, false].map((parallelLegsAlike) => withJoint(question, { circuit: { ...circuit, parallelLegsAlike } }));
};

const removable: Ways = (question) => {
  const bending = question.joint.equipment?.bending;
  // A terminal that comes fixed in its equipment is not removable unless that is said.
  if (bending?.entry !== "opposite" || bending.removableTerminal !== undefined || question.ownTerminal)
    return [question];
  return [true, false].map((removableTerminal) =>
    equipmentWith(question, { bending: { ...bending, removableTerminal } }),
  );
};

const outdoors: Ways = (question) => {
  const { circuit } = question.joint;
  const tap = circuit?.protection;
  if (circuit === undefined || tap?.kind !== "feeder-tap" || tap.outdoors !== undefined) return [question];
  return [true, false].map((each) =>
    withJoint(question, { circuit: { ...circuit, protection: { ...tap, outdoors: each } } }),
  );
};

/** Where 230.46 asks for a mark at all. */
const onService = ({ joint, connector }: Question): boolean =>
  (joint.function !== "termination" || isBlock({ connector })) && joint.circuit?.protection?.kind === "service";

const lineSide: Ways = (question) =>
  onService(question) && question.connector.lineSide === undefined
    ? (["marked", "unmarked"] as const).map((each) => withConnector(question, { lineSide: each }))
    : [question];

/** A splice or tap whose protection is not known may lie on the service. */
const unknownProtection: Ways = (question) => {
  const { joint } = question;
  const { circuit } = joint;
  if (!currentCarrying(question) || (joint.function === "termination" && !isBlock(question))) return [question];
  if (circuit === undefined || circuit.protection !== undefined) return [question];
  return [question, withJoint(question, { circuit: { ...circuit, protection: { kind: "service" } } })];
};

const installed: Ways = (question) =>
  onService(question) && question.basis.edition === "2020" && question.basis.installedOn === undefined
    ? ["2022-12-31", "2023-01-01"].map((installedOn) => ({ ...question, basis: { ...question.basis, installedOn } }))
    : [question];

const equipmentKind: Ways = (question) => {
  const { joint, connector } = question;
  if (joint.function !== "termination" || joint.equipment?.kind !== undefined) return [question];
  if (joint.role === "neutral" && conductorCount(joint) > 1)
    return (["panelboard", "other"] as const).map((kind) => equipmentWith(question, { kind }));
  if (joint.role === "electrode-conductor" && connector.mounting.kind !== "integral")
    return (["electrode", "other"] as const).map((kind) => equipmentWith(question, { kind }));
  return [question];
};

const electrode: Ways = (question) => {
  const { joint } = question;
  if ((joint.role !== "electrode-conductor" && joint.role !== "bonding") || joint.grounding?.electrode !== undefined)
    return [question];
  return ELECTRODES.map((each) => withJoint(question, { grounding: { ...joint.grounding, electrode: each } }));
};

const sole: Ways = (question) => {
  const { joint } = question;
  const sized =
    joint.role === "electrode-conductor" ||
    (joint.role === "bonding" && joint.grounding?.bonding === "electrode-system");
  if (!sized || joint.grounding?.soleConnection !== undefined) return [question];
  return [true, false].map((soleConnection) =>
    withJoint(question, { grounding: { ...joint.grounding, soleConnection } }),
  );
};

const WAYS: readonly Ways[] = [
  place,
  countedStrands,
  strands,
  duties,
  mark,
  connectorTemperature,
  terminalTemperature,
  openingCount,
  legs,
  removable,
  outdoors,
  unknownProtection,
  lineSide,
  installed,
  equipmentKind,
  electrode,
  sole,
];

/** All that the question may stand for; null where that is too much to try. */
export function settle(question: Question): readonly Case[] | null {
  let cases: readonly Question[] = [question];
  for (const ways of WAYS) {
    cases = cases.flatMap(ways);
    if (cases.length > 3000) return null;
  }
  return cases;
}
