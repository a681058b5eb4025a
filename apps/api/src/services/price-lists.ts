import { isCurrency, type PriceLine, type PriceList, priceProblems } from "@landfast/stock";
import { FAULTS_SHOWN, type Fault, Problem, pointerTo } from "../problems/problem.js";
import type {
  PriceListHead,
  PriceListPage,
  PriceListRecord,
  PriceListRepository,
} from "../repositories/price-list-repository.js";

/** A price list as posted. */
export interface PostedPriceList extends Omit<PriceListHead, "id" | "lines" | "createdAt"> {
  readonly lines: readonly PriceLine[];
}

/** A page of the lines of a list in their order. */
export interface PriceLinePage {
  readonly lines: readonly PriceLine[];
  readonly next: number | null;
}

export interface PriceListService {
  /** @throws Problem INCONSISTENT_REQUEST for prices that cannot be used; nothing is stored then. */
  add(posted: PostedPriceList): Promise<PriceListHead>;
  list(limit: number, before: number | null, supplier: string | null): Promise<PriceListPage>;
  /** @throws Problem PRICE_LIST_NOT_FOUND. */
  head(id: string): Promise<PriceListHead>;
  /** A page of lines from the place `after` on; those whose part number holds `search`. @throws Problem PRICE_LIST_NOT_FOUND. */
  lines(id: string, limit: number, after: number, search: string | null): Promise<PriceLinePage>;
  /**
   * The whole list as the stock library asks for it; `priceOn` finds a part's price on a day in it, or why there is none.
   * @throws Problem PRICE_LIST_NOT_FOUND.
   */
  priceListFor(id: string): Promise<PriceList>;
}

/** What the service needs around it. */
export interface PriceListServiceParts {
  readonly priceLists: PriceListRepository;
  readonly tenantId: string;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function priceListService({ priceLists, tenantId, now, newId }: PriceListServiceParts): PriceListService {
  const found = async (id: string): Promise<PriceListRecord> => {
    const record = await priceLists.get(tenantId, id);
    if (record === null) throw new Problem("PRICE_LIST_NOT_FOUND", `There is no price list "${id}".`);
    return record;
  };
  return {
    async add({ lines, ...posted }) {
      refuseBadPrices({ ...posted, lines });
      const head: PriceListHead = { id: newId(), ...posted, lines: lines.length, createdAt: now() };
      await priceLists.add(tenantId, { head, lines });
      return head;
    },
    list(limit, before, supplier) {
      return priceLists.list(tenantId, limit, before, supplier);
    },
    async head(id) {
      return (await found(id)).head;
    },
    async lines(id, limit, after, search) {
      const { lines } = await found(id);
      const wanted = search?.toLowerCase();
      const page: PriceLine[] = [];
      for (let index = after; index < lines.length; index += 1) {
        const line = lines[index];
        if (line === undefined || (wanted !== undefined && !line.partNumber.toLowerCase().includes(wanted))) continue;
        if (page.length === limit) return { lines: page, next: index };
        page.push(line);
      }
      return { lines: page, next: null };
    },
    async priceListFor(id) {
      const { head, lines } = await found(id);
      return {
        id: head.id,
        currency: head.currency,
        validFrom: head.validFrom,
        ...(head.validTo === undefined ? {} : { validTo: head.validTo }),
        lines,
      };
    },
  };
}

function refuseBadPrices({ currency, validFrom, validTo, lines }: PostedPriceList): void {
  const faults: Fault[] = [];
  if (!isCurrency(currency))
    faults.push({
      pointer: "/currency",
      detail: `"${currency}" is not an ISO 4217 currency code in use`,
      accepted: 'an ISO 4217 code: "USD"',
    });
  if (validTo !== undefined && validTo < validFrom)
    faults.push({
      pointer: "/validTo",
      detail: `the list ends on ${validTo}, before it begins on ${validFrom}`,
      accepted: "a day no earlier than validFrom",
    });
  const seen = new Map<string, number>();
  for (const [index, { partNumber, unit, breaks }] of lines.entries()) {
    if (faults.length >= FAULTS_SHOWN) break;
    const first = seen.get(partNumber);
    if (first === undefined) seen.set(partNumber, index);
    else
      faults.push({
        pointer: pointerTo("/lines", index, "partNumber"),
        detail: `"${partNumber}" is priced in line ${first} already; which price is meant cannot be known`,
        accepted: "each part number once, with every quantity break in its one line",
      });
    // The currency was put to the list above; here it would be said again for every line.
    for (const problem of priceProblems({ unit, currency: "USD", breaks }))
      faults.push({
        pointer: pointerTo("/lines", index, "breaks"),
        detail: problem,
        accepted: "breaks by rising quantity, each a whole number of parts with a price of 0 or more",
      });
  }
  if (faults.length > 0) throw new Problem("INCONSISTENT_REQUEST", "The price list cannot be used.", faults);
}
