/* eslint-disable @typescript-eslint/require-await -- the contract returns promises, SQLite answers at once */
import { openDatabase } from "../db/open-database.js";
import { tenants } from "../db/schema.js";
import type { CatalogueRepository } from "./catalogue-repository.js";
import type { JobRepository } from "./job-repository.js";
import type { LabourTableRepository } from "./labour-table-repository.js";
import type { OwnCatalogueRepository } from "./own-catalogue-repository.js";
import type { PriceListRepository } from "./price-list-repository.js";
import { sqliteCatalogueRepository } from "./sqlite-catalogue-repository.js";
import { sqliteJobRepository } from "./sqlite-job-repository.js";
import { sqliteLabourTableRepository } from "./sqlite-labour-table-repository.js";
import { discardUnpublished, sqliteOwnCatalogueRepository } from "./sqlite-own-catalogue-repository.js";
import { sqlitePriceListRepository } from "./sqlite-price-list-repository.js";

/** Everything that is kept, behind contracts that a database of another kind can meet as well. */
export interface Store {
  readonly catalogues: CatalogueRepository;
  readonly jobs: JobRepository;
  readonly ownCatalogues: OwnCatalogueRepository;
  readonly priceLists: PriceListRepository;
  readonly labourTables: LabourTableRepository;
  /** Rejects when the store cannot be read. */
  readonly ping: () => Promise<void>;
  close(): void;
}

/** The one tenant until there are keys. */
export const LOCAL_TENANT = "local";

/**
 * Opens the store in a SQLite file, making and migrating it where needed.
 * @param file a path, or ":memory:".
 */
export function openStore(file: string): Store {
  const database = openDatabase(file);
  database.orm.insert(tenants).values({ id: LOCAL_TENANT, name: "local" }).onConflictDoNothing().run();
  discardUnpublished(database);
  const ping = database.connection.prepare("select 1");
  return {
    catalogues: sqliteCatalogueRepository(database),
    jobs: sqliteJobRepository(database),
    ownCatalogues: sqliteOwnCatalogueRepository(database),
    priceLists: sqlitePriceListRepository(database),
    labourTables: sqliteLabourTableRepository(database),
    async ping() {
      ping.get();
    },
    close() {
      database.connection.close();
    },
  };
}
