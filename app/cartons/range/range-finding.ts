import type { KeptRange } from "#prisma/records/carton-ranges";
import { type ShopWords, valueText } from "../choice-words";

/** A saving of less than one in so many is less than these estimates can tell: a guess. */
const LITTLE = 200;

/**
 * The first line: what today's range costs against the best of as many sizes.
 *
 * @param kept what was worked out; null where nothing was
 * @param today how many sizes stand on the shelf today
 * @param shop how it writes money
 * @returns one sentence
 */
export function rangeFinding(kept: KeptRange | null, today: number, shop: ShopWords): string {
  if (kept === null || kept.points.length === 0) return "Which carton sizes should you keep?";
  const same = kept.points.find(({ most }) => most === today) ?? kept.points.at(-1);
  if (same === undefined || kept.today === null) return "Which carton sizes should you keep?";
  const sizes = same.most === 1 ? "One size" : `${same.most} sizes`;
  if (same.unpackedParcels < kept.today.unpackedParcels) {
    return `${sizes} would hold ${kept.today.unpackedParcels - same.unpackedParcels} parcels more a year than today's ${today}.`;
  }
  const saves = kept.today.value - same.value;
  if (saves <= 0) {
    return same.proof.proven
      ? `Today's ${today} sizes are the best that these parcels can have.`
      : `Nothing better than today's ${today} sizes was found.`;
  }
  if (saves * LITTLE < kept.today.value) {
    return `Today's ${today} sizes do: ${sizes.toLowerCase()} chosen anew would save only ${valueText(saves, shop)} a year.`;
  }
  return `${sizes} could save ${valueText(saves, shop)} a year against today's ${today}.`;
}
