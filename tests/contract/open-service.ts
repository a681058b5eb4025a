import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, type Store, slicedRunner } from "@landfast/api";
import { demoCatalogue } from "@landfast/data";
import type { Solver } from "@landfast/stock";

export type Service = Awaited<ReturnType<typeof buildApp>>;

/** The service with a store of its own in memory and the demonstration catalogue; clock and ids are made up. */
export async function openService(more: { readonly solver?: Solver } = {}): Promise<{ app: Service; store: Store }> {
  const store = openStore(":memory:");
  let ids = 0;
  const clock = {
    now: () => "2026-01-02T03:04:05.000Z",
    newId: () => {
      ids += 1;
      return `id-${ids}`;
    },
  };
  await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
  const app = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, ...more, log: false });
  return { app, store };
}
