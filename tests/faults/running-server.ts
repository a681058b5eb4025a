import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

export interface RunningServer {
  readonly process: ChildProcess;
  /** "http://127.0.0.1:40123". */
  readonly address: string;
  /** Resolves with the exit code and the signal once the process is gone. */
  readonly ended: Promise<{ readonly code: number | null; readonly signal: NodeJS.Signals | null }>;
}

/** Starts the server as a process of its own, from source, on any free port; resolves once it answers. */
export async function startServer(databaseFile: string): Promise<RunningServer> {
  const child = spawnServer({ PORT: "0", DATABASE_FILE: databaseFile, LOG_LEVEL: "warn" });
  const ended = once(child, "exit").then(([code, signal]) => ({
    code: code as number | null,
    signal: signal as NodeJS.Signals | null,
  }));
  let errors = "";
  child.stderr?.on("data", (text: Buffer) => {
    errors += text.toString();
  });
  const address = await new Promise<string>((resolve, reject) => {
    createInterface({ input: child.stdout as NodeJS.ReadableStream }).on("line", (line) => {
      const match = /answers at (\S+);/.exec(line);
      if (match?.[1] !== undefined) resolve(match[1]);
    });
    void ended.then(({ code }) => {
      reject(new Error(`the server ended with ${String(code)} before it answered: ${errors}`));
    });
  });
  return { process: child, address, ended };
}

/** The server's process with this environment on top of the caller's. */
export function spawnServer(environment: Readonly<Record<string, string>>): ChildProcess {
  return spawn(process.execPath, ["--import", "tsx", "--conditions=@landfast/source", "apps/api/src/server.ts"], {
    cwd: ROOT,
    env: { ...process.env, ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
}
