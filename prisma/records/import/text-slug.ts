/**
 * The short form of a name, to compare names by: small letters and digits of any script, joined by
 * hyphens, without accents.
 *
 * @returns the short form; the text itself where it has neither letter nor digit
 * @example textSlug("Tea-Cup & Saucer") // "tea-cup-saucer"
 */
export function textSlug(text: string): string {
  const plain = text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const slug = plain.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-+|-+$/g, "");
  return slug === "" ? plain.trim() : slug;
}
