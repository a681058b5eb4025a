/** Sets of classes as bits, thirty-two to a word: which classes an item can make. */
export class ClassSet {
  readonly #words: Uint32Array;

  constructor(classes: number) {
    this.#words = new Uint32Array(Math.ceil(classes / 32));
  }

  add(place: number): void {
    const word = place >>> 5;
    this.#words[word] = (this.#words[word] ?? 0) | (1 << (place & 31));
  }

  isWithin(other: ClassSet): boolean {
    for (let word = 0; word < this.#words.length; word += 1)
      if (((this.#words[word] ?? 0) & ~(other.#words[word] ?? 0)) !== 0) return false;
    return true;
  }
}
