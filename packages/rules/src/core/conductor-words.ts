/** Conductors and their parts in trade words, for sentences. */
import type { ConductorGroup, ConductorMetal, Stranding } from "./conductor.js";

/** "4/0 AWG compact aluminum", "12 AWG solid copper", "2/0 AWG class B copper". */
export function conductorWords({ size, stranding, metal }: ConductorGroup): string {
  return stranding === "unknown"
    ? `${size} ${metalWords(metal)} of unknown stranding`
    : `${size} ${strandingWords(stranding)} ${metalWords(metal)}`;
}

/** "class B", "compact", "IEC class 5". */
export function strandingWords(stranding: Stranding): string {
  if (stranding === "unknown") return "unknown stranding";
  if (stranding.startsWith("iec-")) return `IEC class ${stranding.slice(-1)}`;
  return stranding.startsWith("class-") ? `class ${stranding.slice(-1)}` : stranding;
}

/** "copper-clad aluminum" for what is written "copper-clad-aluminum". */
export function metalWords(metal: ConductorMetal): string {
  return metal === "copper-clad-aluminum" ? "copper-clad aluminum" : metal;
}

/** "a", "a and b", "a, b and c". */
export function listWords(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
}
