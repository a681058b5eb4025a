/** What the generator works on: the shapes of the library, open to change. */
import type { Basis, ConductorGroup, Connector, Joint } from "@landfast/rules";

type Open<T> = T extends readonly (infer E)[]
  ? Open<E>[]
  : T extends object
    ? { -readonly [K in keyof T]: Open<T[K]> }
    : T;

export type OpenJoint = Open<Joint>;
export type OpenConnector = Open<Connector>;
export type OpenGroup = Open<ConductorGroup>;
export type OpenOpening = OpenConnector["openings"][number];
export type OpenCircuit = Open<NonNullable<Joint["circuit"]>>;
export type OpenEquipment = Open<NonNullable<Joint["equipment"]>>;

export interface Draft {
  joint: OpenJoint;
  connector: OpenConnector;
  basis: Open<Basis>;
}
