import { Type } from "@sinclair/typebox";

const CURSOR = /^[0-9]{1,15}$/;

/** Where a page begins and how long it is. The cursor is one that an earlier page gave. */
export const paging = {
  limit: Type.Integer({ minimum: 1, maximum: 200, default: 50, description: "entries in one page: 1 to 200" }),
  cursor: Type.Optional(
    Type.String({ pattern: "^[A-Za-z0-9_-]{2,40}$", description: 'a cursor as "next" of an earlier page gave it' }),
  ),
};

/** Writes a place in a list as a cursor, or null for no further page. */
export function cursorOf(place: number | null): string | null {
  return place === null ? null : Buffer.from(String(place)).toString("base64url");
}

/** Reads a cursor; undefined when it is none that this service gave. */
export function placeOf(cursor: string): number | undefined {
  const place = Buffer.from(cursor, "base64url").toString("latin1");
  return CURSOR.test(place) && cursorOf(Number(place)) === cursor ? Number(place) : undefined;
}
