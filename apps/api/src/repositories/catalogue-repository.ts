import type { CatalogueItem } from "@landfast/rules";

/** A catalogue as stored: its items in their order, in one revision. */
export interface StoredCatalogue {
  readonly id: string;
  readonly name: string;
  /** Other items are another revision. */
  readonly revision: string;
  readonly loadedAt: string;
  readonly items: readonly CatalogueItem[];
}

/**
 * Where catalogues are kept. A catalogue once stored never changes: other items are another revision.
 * @throws what the store throws when it cannot be reached.
 */
export interface CatalogueRepository {
  /** The newest catalogue of the tenant, or null when there is none yet. */
  current(tenantId: string): Promise<StoredCatalogue | null>;
  /** Stores a catalogue whole or not at all. */
  add(tenantId: string, catalogue: StoredCatalogue): Promise<void>;
}
