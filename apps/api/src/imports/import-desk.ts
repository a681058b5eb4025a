import { Worker } from "node:worker_threads";
import type { EntryRecord } from "../repositories/own-catalogue-repository.js";
import { UnreadableFile } from "./cell.js";
import type { ImportMapping } from "./import-mapping.js";
import type { ImportReport } from "./read-file.js";
import type { RowProblem } from "./row-report.js";
import type { FileKind } from "./write-file.js";

/** Memory that reading a file may take before the thread is ended, in megabytes. */
const MEMORY_MAX_MB = 1024;
/** Connectors that one message carries: short enough to be taken over without a pause. */
const PIECE = 50;

/** What of a report the service itself looks at; the whole of it is JSON text. */
export interface ImportOutcome {
  readonly digest: string;
  readonly fileDigest: string;
  readonly rows: ImportReport["rows"];
  readonly missing: readonly string[];
  readonly recognised: number;
  /** The first of them. */
  readonly problems: readonly RowProblem[];
  readonly report: string;
}

/** What the thread is asked. `file` tells files under way apart. */
export type ThreadTask =
  | {
      readonly kind: "read";
      readonly file: number;
      readonly bytes: Uint8Array;
      readonly form: FileKind;
      readonly mapping: ImportMapping | null;
      /** Whether its connectors will be asked for. */
      readonly keep: boolean;
      readonly problemsShown: number;
    }
  | { readonly kind: "entries"; readonly file: number; readonly from: number; readonly limit: number }
  | { readonly kind: "write"; readonly file: number; readonly documents: readonly string[] }
  | { readonly kind: "bytes"; readonly file: number; readonly form: FileKind }
  | { readonly kind: "drop"; readonly file: number };

export type ThreadReply =
  | { readonly kind: "read"; readonly outcome: ImportOutcome }
  | { readonly kind: "entries"; readonly entries: readonly EntryRecord[] }
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  | { readonly kind: "done" }
  | {
      readonly kind: "unreadable";
      readonly detail: string;
      readonly accepted: string;
      readonly line: number | null;
      readonly tooLarge: boolean;
    }
  | { readonly kind: "failed"; readonly because: string };

interface Waiting {
  readonly resolve: (reply: ThreadReply) => void;
  readonly reject: (reason: Error) => void;
}

/** A file to be read. */
export interface ReadQuestion {
  readonly bytes: Buffer;
  readonly form: FileKind;
  readonly mapping: ImportMapping | null;
  readonly keep: boolean;
  readonly problemsShown: number;
}

/** A file that was read. Whoever asked for it closes it. */
export interface OpenFile {
  readonly outcome: ImportOutcome;
  /** The good connectors, piece by piece. */
  entries(): AsyncGenerator<readonly EntryRecord[]>;
  close(): Promise<void>;
}

/**
 * Reads and writes catalogue files in a thread of its own, so that requests are answered meanwhile. The thread is
 * started when it is first needed and does not keep the process alive while it is idle.
 */
export class ImportDesk {
  readonly #waiting = new Map<number, Waiting>();
  #thread: Worker | undefined;
  #last = 0;

  /** @throws UnreadableFile. */
  async read({ bytes, form, mapping, keep, problemsShown }: ReadQuestion): Promise<OpenFile> {
    const file = this.#next();
    const reply = await this.#ask({ kind: "read", file, bytes, form, mapping, keep, problemsShown });
    if (reply.kind !== "read") throw failureOf(reply);
    const { outcome } = reply;
    const ask = (from: number): Promise<ThreadReply> => this.#ask({ kind: "entries", file, from, limit: PIECE });
    return {
      outcome,
      async *entries() {
        for (let from = 0; from < outcome.rows.good; from += PIECE) {
          const piece = await ask(from);
          if (piece.kind !== "entries") throw failureOf(piece);
          yield piece.entries;
        }
      },
      close: async () => {
        await this.#ask({ kind: "drop", file });
      },
    };
  }

  /** The bytes of a file that holds these connectors, given as JSON texts piece by piece. */
  async write(documents: AsyncIterable<readonly string[]>, form: FileKind): Promise<Uint8Array> {
    const file = this.#next();
    try {
      for await (const piece of documents) {
        const reply = await this.#ask({ kind: "write", file, documents: piece });
        if (reply.kind !== "done") throw failureOf(reply);
      }
      const reply = await this.#ask({ kind: "bytes", file, form });
      if (reply.kind !== "bytes") throw failureOf(reply);
      return reply.bytes;
    } finally {
      await this.#ask({ kind: "drop", file });
    }
  }

  /** Ends the thread at once; what is under way fails. */
  async stop(): Promise<void> {
    const thread = this.#thread;
    this.#thread = undefined;
    this.#failAll("the thread was stopped");
    await thread?.terminate();
  }

  #next(): number {
    this.#last += 1;
    return this.#last;
  }

  #ask(task: ThreadTask): Promise<ThreadReply> {
    const thread = this.#started();
    const id = this.#next();
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      thread.ref();
      thread.postMessage({ id, task });
    });
  }

  #started(): Worker {
    if (this.#thread !== undefined) return this.#thread;
    const thread = startThread();
    this.#thread = thread;
    thread.on("message", ({ id, reply }: { readonly id: number; readonly reply: ThreadReply }) => {
      const waiting = this.#waiting.get(id);
      this.#waiting.delete(id);
      if (this.#waiting.size === 0) thread.unref();
      waiting?.resolve(reply);
    });
    thread.on("error", (reason: Error & { readonly code?: string }) => {
      this.#lose(thread, reason.code === "ERR_WORKER_OUT_OF_MEMORY" ? OUT_OF_MEMORY : String(reason));
    });
    thread.on("exit", (code) => {
      this.#lose(thread, `the thread ended with code ${String(code)}`);
    });
    thread.unref();
    return thread;
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
    const failure =
      because === OUT_OF_MEMORY
        ? new UnreadableFile("Reading the file takes more memory than is given.", "a smaller file", null, true)
        : new Error(because);
    for (const { reject } of all) reject(failure);
  }
}

const OUT_OF_MEMORY = "out of memory";

function failureOf(reply: ThreadReply): Error {
  if (reply.kind === "unreadable") return new UnreadableFile(reply.detail, reply.accepted, reply.line, reply.tooLarge);
  return new Error(reply.kind === "failed" ? reply.because : `the thread answered with ${reply.kind}`);
}

/** Compiled, the thread is a script like this one. Run from source, a loader has to be put before it by hand. */
function startThread(): Worker {
  const resourceLimits = { maxOldGenerationSizeMb: MEMORY_MAX_MB };
  if (!import.meta.url.endsWith(".ts"))
    return new Worker(new URL("./import-thread.js", import.meta.url), { resourceLimits });
  const script = JSON.stringify(new URL("./import-thread.ts", import.meta.url).href);
  return new Worker(`import("tsx/esm/api").then(({ register }) => { register(); return import(${script}); })`, {
    resourceLimits,
    eval: true,
    execArgv: ["--conditions=@landfast/source"],
  });
}
