/** How hard contents are on their box: they fill it, they partly support it, or they are fragile or dense. */
export type LoadType = "easy" | "average" | "difficult";

/**
 * The post's type of a load. Fragile goods are difficult by definition, and so is what is dense or small and loose.
 *
 * @param contents what lies in the box
 * @returns the harder type where several hold
 * @see a national post's guide to packing, 2002, types of load
 * @example loadTypeOf({ isFragile: true, isDense: false, fillsBox: true }) // "difficult"
 */
export function loadTypeOf(contents: {
  readonly isFragile: boolean;
  readonly isDense: boolean;
  readonly fillsBox: boolean;
}): LoadType {
  if (contents.isFragile || contents.isDense) return "difficult";
  return contents.fillsBox ? "easy" : "average";
}
