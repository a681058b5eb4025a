const LEVELS = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;

/** How the process runs. */
export interface Config {
  readonly port: number;
  readonly host: string;
  readonly databaseFile: string;
  readonly logLevel: (typeof LEVELS)[number];
}

/** Thrown with every variable that is wrong named in its message. */
export class ConfigError extends Error {}

/**
 * Reads the configuration from environment variables. An absent one has a default; a bad one is refused, never
 * replaced.
 * @throws ConfigError
 */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const faults: string[] = [];
  const port = environment["PORT"] ?? "8080";
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535)
    faults.push(`PORT is "${port}"; accepted is a whole number from 0 to 65535 (0: any free port)`);
  const host = environment["HOST"] ?? "127.0.0.1";
  if (!/^[A-Za-z0-9.:_-]+$/.test(host)) faults.push(`HOST is "${host}"; accepted is a host name or an IP address`);
  const databaseFile = environment["DATABASE_FILE"] ?? "var/landfast.sqlite";
  if (databaseFile.trim() === "" || databaseFile.includes("\0"))
    faults.push("DATABASE_FILE is empty; accepted is the path of a file");
  const logLevel = LEVELS.find((level) => level === (environment["LOG_LEVEL"] ?? "info"));
  if (logLevel === undefined)
    faults.push(`LOG_LEVEL is "${environment["LOG_LEVEL"] ?? ""}"; accepted is one of ${LEVELS.join(", ")}`);
  if (faults.length > 0 || logLevel === undefined) throw new ConfigError(faults.join("\n"));
  return { port: Number(port), host, databaseFile, logLevel };
}
