import { Problem } from "../problems/problem.js";
import { placeOf } from "../schemas/paging.js";

/** The place that a cursor names; null for none. @throws Problem INVALID_REQUEST for a cursor never given out. */
export function cursorPlace(cursor: string | undefined): number | null {
  if (cursor === undefined) return null;
  const place = placeOf(cursor);
  if (place === undefined)
    throw new Problem("INVALID_REQUEST", "The cursor is none that a page gave.", [
      {
        pointer: "/query/cursor",
        detail: "this cursor was never given out",
        accepted: 'the "next" of an earlier page',
      },
    ]);
  return place;
}
