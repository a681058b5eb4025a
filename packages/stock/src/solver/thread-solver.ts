import { Worker } from "node:worker_threads";
import { type Model, type ModelAnswer, type SolveLimits, type Solver, SolverFailure } from "./solver.js";

interface Waiting {
  readonly resolve: (answer: ModelAnswer) => void;
  readonly reject: (reason: SolverFailure) => void;
}

/** What the thread posts back. */
type ThreadReply =
  | { readonly id: number; readonly answer: ModelAnswer }
  | { readonly id: number; readonly failure: string };

/**
 * Solves in a thread of its own, so that the calling one goes on. The thread is started when it is first needed, takes
 * one model after another, and does not keep the process alive while it is idle.
 */
export class ThreadSolver implements Solver {
  readonly #waiting = new Map<number, Waiting>();
  #thread: Worker | undefined;
  #last = 0;

  solve(model: Model, limits: SolveLimits = {}): Promise<ModelAnswer> {
    const thread = this.#started();
    this.#last += 1;
    const id = this.#last;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      thread.ref();
      thread.postMessage({ id, model, limits });
    });
  }

  /** Ends the thread at once. Solves under way fail; the next solve starts a new thread. */
  async stop(): Promise<void> {
    const thread = this.#thread;
    this.#thread = undefined;
    this.#failAll("the solver was stopped");
    await thread?.terminate();
  }

  #started(): Worker {
    if (this.#thread !== undefined) return this.#thread;
    const thread = new Worker(new URL("./highs-thread.mjs", import.meta.url));
    this.#thread = thread;
    thread.on("message", (reply: ThreadReply) => {
      this.#settle(reply);
    });
    thread.on("error", (reason) => {
      this.#lose(thread, `the solver's thread failed: ${String(reason)}`);
    });
    thread.on("exit", (code) => {
      this.#lose(thread, `the solver's thread ended with code ${String(code)}`);
    });
    thread.unref();
    return thread;
  }

  #settle(reply: ThreadReply): void {
    const waiting = this.#waiting.get(reply.id);
    this.#waiting.delete(reply.id);
    if (this.#waiting.size === 0) this.#thread?.unref();
    if (waiting === undefined) return;
    if ("answer" in reply) waiting.resolve(reply.answer);
    else waiting.reject(new SolverFailure(reply.failure));
  }

  /** A thread that ends after another took its place says nothing about that one's work. */
  #lose(thread: Worker, because: string): void {
    if (this.#thread !== thread) return;
    this.#thread = undefined;
    this.#failAll(because);
  }

  #failAll(because: string): void {
    const all = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of all) reject(new SolverFailure(because));
  }
}
