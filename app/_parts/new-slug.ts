const LONGEST = 60;

/**
 * A readable id made from a name, unlike any that is taken.
 *
 * @param name what a person typed
 * @param taken ids already in use
 * @returns lower-case letters, digits and hyphens
 * @example newSlug("Small bubble", ["small-bubble"]) // "small-bubble-2"
 */
export function newSlug(name: string, taken: readonly string[]): string {
  const plain = name.normalize("NFKD").replaceAll(/\p{M}/gu, "").replaceAll("×", "x").toLowerCase();
  const words = plain
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replaceAll(/^-+|-+$/g, "");
  const slug = words === "" ? "unnamed" : words;
  const used = new Set([...taken, "new", "count"]);
  let number = 1;
  while (used.has(number === 1 ? slug : `${slug}-${number}`)) number += 1;
  return number === 1 ? slug : `${slug}-${number}`;
}
