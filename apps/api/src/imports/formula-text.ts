/** Signs with which a spreadsheet begins a formula, behind any apostrophes that mark text already. */
const LIKE_A_FORMULA = /^'*[=+\-@\t\r]/;
const MARKED = /^'+[=+\-@\t\r]/;

/**
 * Text for a cell of an exported file: what a spreadsheet would run as a formula is marked as text with an apostrophe.
 * `plainText` takes exactly this mark off again: the two are inverse for every text.
 */
export function markedText(text: string): string {
  return LIKE_A_FORMULA.test(text) ? `'${text}` : text;
}

/** The text of a cell without the mark that `markedText` puts on; other apostrophes stay. Nothing is ever run. */
export function plainText(cell: string): string {
  return MARKED.test(cell) ? cell.slice(1) : cell;
}
