/** Nine digits are more than any forecast knows, and half as long as all of them. */
const DIGITS = 9;

/**
 * A part of a forecast as it is kept: JSON, its numbers to nine digits.
 *
 * @param part what to keep
 * @example writtenText({ perWeek: [0.1 + 0.2] }) // '{"perWeek":[0.3]}'
 */
export function writtenText(part: unknown): string {
  return JSON.stringify(part, (_, value: unknown) =>
    typeof value === "number" ? Number(value.toPrecision(DIGITS)) : value,
  );
}

/**
 * Reads what `writtenText` wrote. The edition of the forecast vouches for its shape.
 *
 * @param text as kept
 */
export function readText<Part>(text: string): Part {
  return JSON.parse(text) as Part;
}
