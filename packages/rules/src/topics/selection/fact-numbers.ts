import { type FactPath, factText } from "./facts-read.js";

/** Gives each value of a fact a small number: the same for equal values, another for every other. */
export class FactNumbers {
  readonly #byPath = new Map<FactPath, Map<string, number>>();
  #size = 0;

  /** How many values have a number. */
  get size(): number {
    return this.#size;
  }

  /** The number of the value that the fact has in an object of plain data. */
  numberOf(of: object, path: FactPath): number {
    let byText = this.#byPath.get(path);
    if (byText === undefined) {
      byText = new Map();
      this.#byPath.set(path, byText);
    }
    const text = factText(of, path);
    let number = byText.get(text);
    if (number === undefined) {
      number = byText.size;
      byText.set(text, number);
      this.#size += 1;
    }
    return number;
  }
}

/** One object under judgment, with the numbers of its facts as far as they were asked for. */
export class NumberedFacts {
  readonly #of: object;
  readonly #numbers: FactNumbers;
  readonly #known = new Map<FactPath, number>();

  constructor(of: object, numbers: FactNumbers) {
    this.#of = of;
    this.#numbers = numbers;
  }

  numberOf(path: FactPath): number {
    let number = this.#known.get(path);
    if (number === undefined) {
      number = this.#numbers.numberOf(this.#of, path);
      this.#known.set(path, number);
    }
    return number;
  }

  /** One text for the values of several facts. */
  keyOf(paths: readonly FactPath[]): string {
    let key = "";
    for (const path of paths) key += `${String(this.numberOf(path))},`;
    return key;
  }
}
