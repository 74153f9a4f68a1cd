/**
 * Names in a row.
 *
 * @param names as they are said
 * @param word before the last one
 * @returns "A", "A and B", "A, B and C"
 * @example listed(["Wrap", "Fill"]) // "Wrap and Fill"
 */
export function listed(names: readonly string[], word: "and" | "or" = "and"): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} ${word} ${last}`;
}
