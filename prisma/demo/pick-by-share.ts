import type { Random } from "#prisma/demo/seeded-random";

/**
 * Picks one of a list, each as often as its share of the whole.
 *
 * @param random - where the chance comes from
 * @param list - what to pick from, with shares above 0
 * @returns one of the list
 * @throws RangeError if the list is empty
 * @example pickByShare(random, [{ id: "near", share: 5 }, { id: "far", share: 4 }]);
 */
export function pickByShare<Choice extends { readonly share: number }>(
  random: Random,
  list: readonly Choice[],
): Choice {
  const point = random() * list.reduce((sum, choice) => sum + choice.share, 0);
  let reached = 0;
  const picked = list.find((choice) => {
    reached += choice.share;
    return point < reached;
  });
  const found = picked ?? list.at(-1);
  if (found === undefined) throw new RangeError("pickByShare requires a choice, got an empty list");
  return found;
}
