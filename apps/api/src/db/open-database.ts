import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import Sqlite from "better-sqlite3";
import { type BetterSQLite3Database, drizzle } from "drizzle-orm/better-sqlite3";
import { migrate } from "drizzle-orm/better-sqlite3/migrator";
import * as schema from "./schema.js";

/** An open SQLite file, migrated to the tables of this version. */
export interface Database {
  readonly orm: BetterSQLite3Database<typeof schema>;
  /** The connection itself, for prepared bulk writes and transactions. */
  readonly connection: Sqlite.Database;
}

/** The same place seen from src and from dist. */
const MIGRATIONS = fileURLToPath(new URL("../../drizzle", import.meta.url));

/**
 * Opens the file, making it and its folder where they are not there, and brings its tables up to date.
 *
 * WAL with synchronous=FULL: a commit is on the disk before it is acknowledged, and readers do not wait for writers.
 * @param file a path, or ":memory:" for a store that lives as long as the process.
 */
export function openDatabase(file: string): Database {
  if (file !== ":memory:") mkdirSync(dirname(file), { recursive: true });
  const connection = new Sqlite(file);
  connection.pragma("busy_timeout = 5000");
  // Taken by a new file only. Documents of many kilobytes then lie in few pages, and a large job is written faster.
  connection.pragma("page_size = 16384");
  connection.pragma("journal_mode = WAL");
  connection.pragma("synchronous = FULL");
  // Moving 16 MB of log into the file at once, as is usual, would keep requests waiting for 30 ms and more.
  connection.pragma("wal_autocheckpoint = 100");
  connection.pragma("foreign_keys = ON");
  const orm = drizzle(connection, { schema });
  migrate(orm, { migrationsFolder: MIGRATIONS });
  return { orm, connection };
}
