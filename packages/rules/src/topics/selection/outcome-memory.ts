import type { CatalogueItem } from "../../core/connector.js";
import { FactNumbers, type NumberedFacts } from "./fact-numbers.js";
import type { FactPath, FactsRead } from "./facts-read.js";

/** The numbers of a catalogue's facts: a column for each fact, in the order of the catalogue. */
export class CatalogueColumns {
  readonly items: readonly CatalogueItem[];
  readonly #numbers = new FactNumbers();
  readonly #columns = new Map<FactPath, Int32Array>();

  constructor(items: readonly CatalogueItem[]) {
    this.items = items;
  }

  columnOf(path: FactPath): Int32Array {
    let column = this.#columns.get(path);
    if (column === undefined) {
      column = Int32Array.from(this.items, (item) => this.#numbers.numberOf(item, path));
      this.#columns.set(path, column);
    }
    return column;
  }
}

/**
 * Outcomes of one question about a joint and a connector, remembered by the facts that the answers were read from.
 *
 * Connectors that agree in those facts are one group; joints that agree in theirs share one list of outcomes. When an
 * answer is found to rest on a fact that was not among them, the fact is added and everything remembered so far is
 * forgotten, so what is remembered always rests on the facts of its key and on no others.
 */
export class OutcomeMemory<Outcomes> {
  readonly #columns: CatalogueColumns;
  #joint: readonly FactPath[] = [];
  #connector: readonly FactPath[] = [];
  #groups: Int32Array;
  #groupCount = 1;
  readonly #outcomes = new Map<string, Outcomes>();
  readonly #unknown: (groups: number) => Outcomes;

  /** @param unknown the outcomes of so many groups, none of them known yet. */
  constructor(columns: CatalogueColumns, unknown: (groups: number) => Outcomes) {
    this.#columns = columns;
    this.#unknown = unknown;
    this.#groups = new Int32Array(columns.items.length);
  }

  /** The group of each connector, in the order of the catalogue. */
  get groups(): Int32Array {
    return this.#groups;
  }

  /** Places for outcomes that are kept, known or not. */
  get size(): number {
    return this.#outcomes.size * this.#groupCount;
  }

  /** The outcomes known for joints like this one, by group; outcomes found are put into it. */
  outcomesFor(joint: NumberedFacts): Outcomes {
    const key = joint.keyOf(this.#joint);
    let outcomes = this.#outcomes.get(key);
    if (outcomes === undefined) {
      outcomes = this.#unknown(this.#groupCount);
      this.#outcomes.set(key, outcomes);
    }
    return outcomes;
  }

  /** Takes in the facts that an answer was read from. Returns whether any was new: then groups and outcomes are void. */
  restsOn(read: FactsRead): boolean {
    const joint = withNew(this.#joint, read.joint);
    const connector = withNew(this.#connector, read.connector);
    if (joint === this.#joint && connector === this.#connector) return false;
    if (connector !== this.#connector) this.#regroup(connector);
    this.#joint = joint;
    this.#connector = connector;
    this.forget();
    return true;
  }

  forget(): void {
    this.#outcomes.clear();
  }

  #regroup(paths: readonly FactPath[]): void {
    const { length } = this.#columns.items;
    const groups = new Int32Array(length);
    let count = Math.min(length, 1);
    for (const path of paths) {
      const column = this.#columns.columnOf(path);
      const numbers = new Map<number, number>();
      for (let index = 0; index < length; index += 1) {
        const pair = (groups[index] ?? 0) * length + (column[index] ?? 0);
        let group = numbers.get(pair);
        if (group === undefined) {
          group = numbers.size;
          numbers.set(pair, group);
        }
        groups[index] = group;
      }
      count = numbers.size;
    }
    this.#groups = groups;
    this.#groupCount = count;
  }
}

/** The same list where nothing is new. */
function withNew(known: readonly FactPath[], read: ReadonlySet<FactPath>): readonly FactPath[] {
  let all = known;
  for (const path of read) if (!known.includes(path)) all = [...all, path];
  return all;
}
