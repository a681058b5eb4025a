/** Conductors and their parts in trade words, for sentences. */
import type { ConductorGroup, ConductorMetal, Stranding } from "./conductor.js";

/** "4/0 AWG compact aluminum", "12 AWG solid copper", "2/0 AWG class B copper". */
export function conductorWords({ size, stranding, strands, metal }: ConductorGroup): string {
  if (stranding === "unknown" && strands !== undefined)
    return `${size} ${metalWords(metal)} of ${strands === 1 ? "one strand" : `${String(strands)} strands`}`;
  return stranding === "unknown"
    ? `${size} ${metalWords(metal)} of unknown stranding`
    : `${size} ${strandingWords(stranding)} ${metalWords(metal)}`;
}

/** "class B", "compact", "IEC class 5". */
export function strandingWords(stranding: Stranding): string {
  return STRANDING_WORDS[stranding];
}

const STRANDING_WORDS: Readonly<Record<Stranding, string>> = {
  solid: "solid",
  "class-B": "class B",
  "class-C": "class C",
  "class-D": "class D",
  compressed: "compressed",
  compact: "compact",
  "class-G": "class G",
  "class-H": "class H",
  "class-I": "class I",
  "class-K": "class K",
  "class-M": "class M",
  "iec-class-1": "IEC class 1",
  "iec-class-2": "IEC class 2",
  "iec-class-5": "IEC class 5",
  "iec-class-6": "IEC class 6",
  unknown: "unknown stranding",
};

/** "solid, class B and compact". A listing is asked about again and again, so its words are put together once. */
export function strandingListWords(strandings: readonly Stranding[]): string {
  let words = listed.get(strandings);
  if (words === undefined) {
    words = listWords(strandings.map(strandingWords));
    listed.set(strandings, words);
  }
  return words;
}

const listed = new WeakMap<readonly Stranding[], string>();

/** "copper-clad aluminum" for what is written "copper-clad-aluminum". */
export function metalWords(metal: ConductorMetal): string {
  return metal === "copper-clad-aluminum" ? "copper-clad aluminum" : metal;
}

/** "a", "a and b", "a, b and c". */
export function listWords(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
}
