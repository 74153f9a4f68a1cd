/**
 * Joins the class names that apply into one attribute value.
 *
 * @param names - class names; what is not a text is left out
 * @returns the names with spaces between
 * @example classList("button", isWide && "wide") // "button" when isWide is false
 */
export function classList(...names: readonly (string | false | null | undefined)[]): string {
  return names.filter((name) => typeof name === "string" && name !== "").join(" ");
}
