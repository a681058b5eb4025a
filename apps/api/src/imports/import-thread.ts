/** The thread in which files are read and written: it shares nothing with the one that answers requests. */
import { constants, setPriority } from "node:os";
import { parentPort } from "node:worker_threads";
import type { EntryRecord } from "../repositories/own-catalogue-repository.js";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import { UnreadableFile } from "./cell.js";
import { entryCheck } from "./check-entry.js";
import type { ThreadReply, ThreadTask } from "./import-desk.js";
import { readFile } from "./read-file.js";
import { CatalogueFile } from "./write-file.js";

// Reading gives way to answering. On Linux this is the priority of the calling thread, elsewhere of the whole process.
if (process.platform === "linux") setPriority(constants.priority.PRIORITY_LOW);

const check = entryCheck();
const read = new Map<number, readonly CatalogueEntry[]>();
const written = new Map<number, CatalogueFile>();

parentPort?.on("message", ({ id, task }: { readonly id: number; readonly task: ThreadTask }) => {
  const { reply, transfer } = answer(task);
  parentPort?.postMessage({ id, reply }, transfer);
});

function answer(task: ThreadTask): { readonly reply: ThreadReply; readonly transfer: ArrayBuffer[] } {
  try {
    return carryOut(task);
  } catch (error) {
    const reply: ThreadReply =
      error instanceof UnreadableFile
        ? {
            kind: "unreadable",
            detail: error.message,
            accepted: error.accepted,
            line: error.line,
            tooLarge: error.tooLarge,
          }
        : { kind: "failed", because: error instanceof Error ? (error.stack ?? error.message) : String(error) };
    return { reply, transfer: [] };
  }
}

function carryOut(task: ThreadTask): { readonly reply: ThreadReply; readonly transfer: ArrayBuffer[] } {
  switch (task.kind) {
    case "read": {
      const { bytes, form, mapping } = task;
      const { report, entries } = readFile({ bytes: Buffer.from(bytes), form, mapping }, check);
      if (task.keep) read.set(task.file, entries);
      return {
        reply: {
          kind: "read",
          outcome: {
            digest: report.digest,
            fileDigest: report.fileDigest,
            rows: report.rows,
            missing: report.columns.missing,
            recognised: report.recognised.length,
            problems: report.problems.slice(0, task.problemsShown),
            report: JSON.stringify(report),
          },
        },
        transfer: [],
      };
    }
    case "entries": {
      const entries = (read.get(task.file) ?? []).slice(task.from, task.from + task.limit);
      return { reply: { kind: "entries", entries: entries.map(recordOf) }, transfer: [] };
    }
    case "write": {
      const file = written.get(task.file) ?? new CatalogueFile();
      written.set(task.file, file);
      for (const document of task.documents) file.add(JSON.parse(document) as CatalogueEntry);
      return { reply: { kind: "done" }, transfer: [] };
    }
    case "bytes": {
      const bytes = new Uint8Array((written.get(task.file) ?? new CatalogueFile()).bytes(task.form));
      return { reply: { kind: "bytes", bytes }, transfer: [bytes.buffer] };
    }
    default:
      read.delete(task.file);
      written.delete(task.file);
      return { reply: { kind: "done" }, transfer: [] };
  }
}

function recordOf(entry: CatalogueEntry): EntryRecord {
  return { partNumber: entry.partNumber, family: entry.family, document: JSON.stringify(entry) };
}
