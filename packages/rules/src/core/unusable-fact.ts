/**
 * A posted fact that no work can be done with: a negative length, 3.5 conductors, two entries of one name. Thrown, not
 * answered: it is the asker's slip, and no edition of any code has an answer to it.
 */
export class UnusableFact extends RangeError {
  /** Where the fact was posted: "question/sets". */
  readonly path: string;
  /** What is wrong with it, as the rest of a sentence that begins with the path. */
  readonly problem: string;
  /** What would be accepted there. */
  readonly accepted: string;

  constructor(path: string, problem: string, accepted: string) {
    super(`${path} ${problem}`);
    this.name = "UnusableFact";
    this.path = path;
    this.problem = problem;
    this.accepted = accepted;
  }
}
