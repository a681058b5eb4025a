import type { Drive, Length } from "@landfast/rules";
import type { PartSupplier } from "../schemas/catalogue-entry.js";
import type { Reading } from "./cell.js";
import { quantityText, readQuantity } from "./read-quantity.js";

/** One word of a closed list. "Split Bolt" is read as split-bolt, and that is said. */
export function readWord<T extends string>(written: string, words: readonly T[]): Reading<T> {
  const exact = words.find((word) => word === written);
  if (exact !== undefined) return { value: exact };
  const plain = plainWord(written);
  const same = words.find((word) => plainWord(word) === plain);
  if (same !== undefined) return { value: same, readAs: same, because: "the usual spelling of the word" };
  return { problem: `${JSON.stringify(written)} is not one of the words accepted here`, accepted: words.join(", ") };
}

/** Several words of a closed list, with commas or semicolons between them; "none" for an empty list. */
export function readWords<T extends string>(written: string, words: readonly T[]): Reading<readonly T[]> {
  if (written === "none") return { value: [] };
  const value: T[] = [];
  let because: string | undefined;
  for (const part of written.split(/[,;]/)) {
    const reading = readWord(part.trim(), words);
    if ("problem" in reading) return reading;
    because ??= reading.because;
    if (value.includes(reading.value))
      return { problem: `"${reading.value}" stands twice in the list`, accepted: "each word once" };
    value.push(reading.value);
  }
  const own = wordsText(value);
  return own === written ? { value } : { value, readAs: own, because: because ?? "the usual spelling of a list" };
}

/** Several words as a cell of our own files has them. */
export function wordsText(words: readonly string[]): string {
  return words.length === 0 ? "none" : words.join(", ");
}

/** Several texts with semicolons between them, "none" for an empty list, or a JSON list where a text needs it. */
export function readTexts(written: string): Reading<readonly string[]> {
  if (written === "none") return { value: [] };
  if (!written.startsWith("[")) return { value: written.split(";").map((part) => part.trim()) };
  const value = parsedJson(written);
  return Array.isArray(value) && value.every((one) => typeof one === "string")
    ? { value }
    : { problem: "the list is not a JSON list of texts", accepted: 'texts with semicolons between them, or ["…","…"]' };
}

/** Several texts as a cell of our own files has them. */
export function textsText(texts: readonly string[]): string {
  const plain = texts.length === 0 ? "none" : texts.join("; ");
  const reading = readTexts(plain);
  const same = "value" in reading && JSON.stringify(reading.value) === JSON.stringify(texts);
  return same ? plain : JSON.stringify(texts);
}

export function readYesNo(written: string): Reading<boolean> {
  if (written === "yes" || written === "no") return { value: written === "yes" };
  const yes = /^(?:y|yes|true)$/i.test(written);
  if (!yes && !/^(?:n|no|false)$/i.test(written))
    return { problem: `${JSON.stringify(written)} is neither yes nor no`, accepted: "yes or no" };
  return { value: yes, readAs: yes ? "yes" : "no", because: "the usual spelling of yes and no" };
}

export function readWholeNumber(written: string): Reading<number> {
  if (/^[1-9]\d{0,8}$/.test(written)) return { value: Number(written) };
  return { problem: `${JSON.stringify(written)} is not a whole number from 1`, accepted: "a whole number from 1" };
}

/** A calendar day. Only year-month-day is read: in "3/4/2026" day and month cannot be told apart. */
export function readDay(written: string): Reading<string> {
  if (/^\d{4}-\d{2}-\d{2}$/.test(written)) return { value: written };
  return {
    problem: `${JSON.stringify(written)} is not a day as year-month-day; other orders cannot be told apart`,
    accepted: 'a day such as "2026-03-31"',
  };
}

/** Suppliers with semicolons between them, each with its own number of the part behind a colon where it has one. */
export function readSuppliers(written: string): Reading<readonly PartSupplier[]> {
  return {
    value: written.split(";").map((part) => {
      const colon = part.indexOf(":");
      if (colon === -1) return { name: part.trim() };
      return { name: part.slice(0, colon).trim(), partNumber: part.slice(colon + 1).trim() };
    }),
  };
}

export function suppliersText(suppliers: readonly PartSupplier[]): string {
  return suppliers
    .map(({ name, partNumber }) => (partNumber === undefined ? name : `${name}: ${partNumber}`))
    .join("; ");
}

const PLAIN_DRIVES = ["external-hex", "split-bolt", "breakaway", "clamp-bolt", "hand", "none"] as const;
const SLOT = /^(slotted-hex|slotted (?:10-and-larger|under-10)) (.+?) x (.+)$/;
const DRIVE_ACCEPTED = `${PLAIN_DRIVES.join(", ")}, "socket 5/16 in", "slotted 10-and-larger 0.05 in x 0.3 in", "slotted under-10 …" or "slotted-hex …" with width and length of the slot; "no screw" where there is none`;

/** How a screw is driven; "no screw" where the part has none, and null stands for that. */
export function readDrive(written: string): Reading<Drive | null> {
  if (written === "no screw") return { value: null };
  const plain = PLAIN_DRIVES.find((kind) => kind === written);
  if (plain !== undefined) return { value: { kind: plain } };
  const socket = /^socket ([1-9]\d{0,2}(?:\/[1-9]\d{0,2})?) in$/.exec(written);
  if (socket !== null) return { value: { kind: "socket", acrossFlats: socket[1] ?? "" } };
  const slot = SLOT.exec(written);
  if (slot !== null) {
    const [, kind = "", width = "", length = ""] = slot;
    const slotWidth = readLength(width);
    const slotLength = readLength(length);
    if (slotWidth !== undefined && slotLength !== undefined) {
      if (kind === "slotted-hex") return { value: { kind: "slotted-hex", slotWidth, slotLength } };
      const screwSize = kind === "slotted under-10" ? "under-10" : "10-and-larger";
      return { value: { kind: "slotted", screwSize, slotWidth, slotLength } };
    }
  }
  const word = readWord(written, PLAIN_DRIVES);
  if ("value" in word) return { value: { kind: word.value }, readAs: word.value, because: word.because ?? "" };
  return { problem: `${JSON.stringify(written)} is not a known way to drive a screw`, accepted: DRIVE_ACCEPTED };
}

export function driveText(drive: Drive | null): string {
  if (drive === null) return "no screw";
  switch (drive.kind) {
    case "socket":
      return `socket ${drive.acrossFlats} in`;
    case "slotted":
      return `slotted ${drive.screwSize} ${lengthText(drive.slotWidth)} x ${lengthText(drive.slotLength)}`;
    case "slotted-hex":
      return `slotted-hex ${lengthText(drive.slotWidth)} x ${lengthText(drive.slotLength)}`;
    default:
      return drive.kind;
  }
}

/** The value of a JSON text, or undefined where it is none. */
export function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function readLength(written: string): Length | undefined {
  const reading = readQuantity("length", written, undefined, false);
  return "value" in reading ? (reading.value as Length) : undefined;
}

function lengthText(length: Length): string {
  return quantityText("length", length);
}

function plainWord(word: string): string {
  return word
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, "-");
}
