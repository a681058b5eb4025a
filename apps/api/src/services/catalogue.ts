import type { CatalogueItem, ConnectorFamily } from "@landfast/rules";
import { Problem } from "../problems/problem.js";
import type { CatalogueRepository, StoredCatalogue } from "../repositories/catalogue-repository.js";

/** The catalogue in use, ready to be asked. */
export interface Catalogue {
  readonly id: string;
  readonly name: string;
  readonly revision: string;
  readonly loadedAt: string;
  /** The parts in force. */
  readonly items: readonly CatalogueItem[];
  readonly byPartNumber: ReadonlyMap<string, CatalogueItem>;
  /** The id under which the store keeps this very revision. */
  readonly recordId: string;
  /** The day on which parts had to be in force, "2026-03-31"; null where the catalogue has no days. */
  readonly on: string | null;
  /** Parts that it holds and that are not to be used on that day, and why. */
  readonly outOfForce: ReadonlyMap<string, string>;
  /** The address that lists its connectors. */
  readonly listedAt: string;
}

/** What a catalogue is known by, and how many connectors of each family it holds. */
export interface CatalogueSummary {
  readonly id: string;
  readonly name: string;
  readonly revision: string;
  readonly loadedAt: string;
  readonly connectors: number;
  readonly families: readonly { readonly family: ConnectorFamily; readonly connectors: number }[];
}

export interface ConnectorPage {
  readonly connectors: readonly CatalogueItem[];
  readonly next: number | null;
}

export interface CatalogueService {
  /** The catalogue in use. @throws Problem NOT_READY when the store holds none yet. */
  current(): Promise<Catalogue>;
  summary(): Promise<CatalogueSummary>;
  /** A page of connectors in the catalogue's order, from the place `after` on. */
  connectors(family: ConnectorFamily | null, limit: number, after: number): Promise<ConnectorPage>;
  /** @throws Problem CONNECTOR_NOT_FOUND. */
  connector(partNumber: string): Promise<CatalogueItem>;
}

/** Puts a catalogue into a store that has none. */
export async function loadCatalogueIfNone(
  repository: CatalogueRepository,
  tenantId: string,
  supply: () => Pick<StoredCatalogue, "name" | "revision" | "items">,
  clock: { readonly now: () => string; readonly newId: () => string },
): Promise<void> {
  if ((await repository.current(tenantId)) !== null) return;
  const { name, revision, items } = supply();
  await repository.add(tenantId, { id: clock.newId(), name, revision, loadedAt: clock.now(), items });
}

/** Answers from the tenant's catalogue. It is read once: a stored catalogue never changes. */
export function catalogueService(repository: CatalogueRepository, tenantId: string): CatalogueService {
  let held: Catalogue | undefined;
  const current = async (): Promise<Catalogue> => {
    if (held !== undefined) return held;
    const stored = await repository.current(tenantId);
    if (stored === null) throw new Problem("NOT_READY", "No catalogue has been loaded yet.");
    held = opened(stored);
    return held;
  };
  return {
    current,
    async summary() {
      const { id, name, revision, loadedAt, items } = await current();
      return { id, name, revision, loadedAt, connectors: items.length, families: countFamilies(items) };
    },
    async connectors(family, limit, after) {
      const { items } = await current();
      const page: CatalogueItem[] = [];
      for (let index = after; index < items.length; index += 1) {
        const item = items[index];
        if (item === undefined || (family !== null && item.family !== family)) continue;
        if (page.length === limit) return { connectors: page, next: index };
        page.push(item);
      }
      return { connectors: page, next: null };
    },
    async connector(partNumber) {
      const item = (await current()).byPartNumber.get(partNumber);
      if (item === undefined)
        throw new Problem("CONNECTOR_NOT_FOUND", `The catalogue has no connector "${partNumber}".`);
      return item;
    },
  };
}

function opened(stored: StoredCatalogue): Catalogue {
  return {
    ...stored,
    byPartNumber: new Map(stored.items.map((item) => [item.partNumber, item])),
    recordId: stored.id,
    on: null,
    outOfForce: new Map(),
    listedAt: "/v1/catalogue/connectors",
  };
}

/** How many of each family there are, by the family's name. */
export function countFamilies(items: readonly Pick<CatalogueItem, "family">[]): CatalogueSummary["families"] {
  const counts = new Map<ConnectorFamily, number>();
  for (const { family } of items) counts.set(family, (counts.get(family) ?? 0) + 1);
  return [...counts]
    .map(([family, connectors]) => ({ family, connectors }))
    .sort((a, b) => (a.family < b.family ? -1 : 1));
}
