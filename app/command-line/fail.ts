/**
 * Tells why a command did not do what it was asked to, and lets it end with an exit code that says so.
 *
 * @param words a whole sentence with the way out
 */
export function fail(words: string): void {
  console.error(words);
  process.exitCode = 1;
}
