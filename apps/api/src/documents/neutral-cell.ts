/** Signs with which a spreadsheet begins a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Text for a cell of a spreadsheet: what would be taken for a formula is marked as text with an apostrophe. Numbers
 * never come here, so that a negative number stays one.
 */
export function neutralCell(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}
