/**
 * Which facts of a joint and of a connector an outcome rests on, seen by watching the rule read them.
 *
 * A rule is a function of the facts it reads and of nothing else. So where a joint and a connector agree with earlier
 * ones in every fact that was read then, the rule would read the same facts again in the same order and come to the
 * same outcome. The list is found by looking, not kept by hand: a rule that reads one fact more is noticed the first time
 * it does.
 */
import type { Connector } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";

/** The name of a fact: "circuit/voltageV", "openings"; "circuit" alone stands for whether there is one at all. */
export type FactPath = string;
/** Everything, where somebody looked at an object as a whole. */
export const WHOLE: FactPath = "*";

export interface FactsRead {
  readonly joint: Set<FactPath>;
  readonly connector: Set<FactPath>;
}

/** Parts of a joint whose fields are facts of their own: a rule that reads the voltage does not rest on the load. */
const IN_PARTS: readonly string[] = ["circuit", "equipment", "place"];
/** Read for the words of an answer only. */
const WORDS_ONLY: readonly string[] = ["description"];

/** The joint, noting in `read` what is read of it. */
export function watchedJoint(joint: Joint, read: Set<FactPath>): Joint {
  return watched(joint, "", read, IN_PARTS, []);
}

/** The connector, noting in `read` what is read of it. */
export function watchedConnector<C extends Connector>(connector: C, read: Set<FactPath>): C {
  return watched(connector, "", read, [], WORDS_ONLY);
}

/** The value of a fact as text, the same for equal values only. */
export function factText(of: object, path: FactPath): string {
  if (path === WHOLE) return JSON.stringify(of);
  const slash = path.indexOf("/");
  if (slash >= 0) {
    const part = fieldOf(of, path.slice(0, slash));
    const name = path.slice(slash + 1);
    return textOf(isObject(part) && name !== WHOLE ? fieldOf(part, name) : part);
  }
  const value = fieldOf(of, path);
  return IN_PARTS.includes(path) && isObject(value) ? "there" : textOf(value);
}

/**
 * Stands before an object of plain data. The data itself is not the proxy's target, so that frozen data may be watched
 * and so that nothing kept by the identity of the object passes from one watching to another.
 */
function watched<T extends object>(
  of: T,
  prefix: string,
  read: Set<FactPath>,
  inParts: readonly string[],
  wordsOnly: readonly string[],
): T {
  const parts = new Map<string, object>();
  const wholly = (): void => {
    read.add(prefix === "" ? WHOLE : `${prefix}${WHOLE}`);
  };
  return new Proxy<object>(
    {},
    {
      get(_target, name): unknown {
        if (typeof name === "symbol") return Reflect.get(of, name);
        const value = fieldOf(of, name);
        if (!wordsOnly.includes(name)) read.add(`${prefix}${name}`);
        if (!inParts.includes(name) || !isObject(value)) return value;
        let part = parts.get(name);
        if (part === undefined) {
          part = watched(value, `${name}/`, read, [], []);
          parts.set(name, part);
        }
        return part;
      },
      has(_target, name) {
        if (typeof name === "string") read.add(`${prefix}${name}`);
        return name in of;
      },
      ownKeys() {
        wholly();
        return Reflect.ownKeys(of);
      },
      getOwnPropertyDescriptor(_target, name) {
        wholly();
        const descriptor = Reflect.getOwnPropertyDescriptor(of, name);
        return descriptor === undefined ? undefined : { ...descriptor, configurable: true };
      },
    },
  ) as T;
}

function fieldOf(of: object, name: string): unknown {
  return (of as Readonly<Record<string, unknown>>)[name];
}

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** JSON tells equal plain data apart from all other; what is absent has no JSON and gets a text that is none. */
function textOf(value: unknown): string {
  return value === undefined ? "absent" : JSON.stringify(value);
}
