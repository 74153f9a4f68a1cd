/**
 * Counts the rows of a CSV text that hold anything, by the grammar of RFC 4180 and with any usual line end;
 * written apart from the reader under test.
 *
 * @see https://www.rfc-editor.org/rfc/rfc4180 section 2
 */
export function rowsWithContent(text: string): number {
  let rows = 0;
  let isQuoted = false;
  let hasContent = false;
  for (const sign of text) {
    if (sign === '"') isQuoted = !isQuoted;
    if (!isQuoted && (sign === "\n" || sign === "\r")) {
      if (hasContent) rows += 1;
      hasContent = false;
    } else if (!',;|\t" '.includes(sign)) hasContent = true;
  }
  return hasContent ? rows + 1 : rows;
}
