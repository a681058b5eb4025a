import { PROBLEMS, type ProblemCode, type ProblemKind } from "./problem-codes.js";

/** One place in the request that is wrong. */
export interface Fault {
  /** JSON Pointer into the body; for the query or the path, "/query/…" or "/path/…" with `in` beside it. */
  readonly pointer: string;
  readonly detail: string;
  /** What would be accepted there. */
  readonly accepted: string;
}

/** A problem document as RFC 9457 has it, with a stable code and the places that are wrong. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance: string;
  readonly code: ProblemCode;
  readonly errors: readonly Fault[];
}

/** How many faults one answer names. */
export const FAULTS_SHOWN = 100;

/** Thrown where a request cannot be carried out; becomes a problem document at the edge. */
export class Problem extends Error {
  readonly code: ProblemCode;
  readonly faults: readonly Fault[];
  /** Response headers that belong to it. */
  readonly headers: Readonly<Record<string, string>>;

  constructor(
    code: ProblemCode,
    detail: string,
    faults: readonly Fault[] = [],
    headers: Readonly<Record<string, string>> = {},
  ) {
    super(detail);
    this.name = "Problem";
    this.code = code;
    this.faults = faults;
    this.headers = headers;
  }

  get kind(): ProblemKind {
    return PROBLEMS[this.code];
  }

  /** @param instance the address that was asked. */
  document(instance: string): ProblemDocument {
    const { status, title } = this.kind;
    return {
      type: problemType(this.code),
      title,
      status,
      detail: this.message,
      instance,
      code: this.code,
      errors: this.faults.slice(0, FAULTS_SHOWN),
    };
  }
}

/** The address at which a kind of problem is described: "/problems/body-too-large". */
export function problemType(code: ProblemCode): string {
  return `/problems/${code.toLowerCase().replaceAll("_", "-")}`;
}

/** A JSON Pointer (RFC 6901) to a place below another. */
export function pointerTo(base: string, ...steps: readonly (string | number)[]): string {
  return steps.reduce<string>(
    (pointer, step) => `${pointer}/${String(step).replaceAll("~", "~0").replaceAll("/", "~1")}`,
    base,
  );
}
