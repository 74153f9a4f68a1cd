import type { CostedMix } from "#lib/cushioning/purchase/costed-mix";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import type { CushionStyle } from "#lib/packing/recipe-version";

/** A type whose parcels are packed in other styles than before. */
export type SwitchedType = {
  readonly typeId: string;
  /** for each style whose parcels change, how many before and after */
  readonly styles: readonly {
    readonly style: CushionStyle;
    readonly before: number;
    readonly after: number;
  }[];
};

/** Less than a hundredth of a parcel is no switch. */
const NEARLY_NOTHING = 0.01;

/**
 * The types that two plans pack in different styles.
 *
 * @param question item types with their ways
 * @param before a plan
 * @param after another plan for the same types
 * @returns types by the question's order, with the parcels by style
 */
export function switchedTypes(
  { types }: Pick<MixQuestion, "types">,
  before: Pick<CostedMix, "split">,
  after: Pick<CostedMix, "split">,
): SwitchedType[] {
  return types.flatMap(({ id, ways }) => {
    const styles = ways
      .map(({ style }) => ({
        style,
        before: parcelsOf(before, id, style),
        after: parcelsOf(after, id, style),
      }))
      .filter((each) => Math.abs(each.after - each.before) > NEARLY_NOTHING);
    return styles.length === 0 ? [] : [{ typeId: id, styles }];
  });
}

function parcelsOf({ split }: Pick<CostedMix, "split">, typeId: string, style: CushionStyle): number {
  return split.find((part) => part.typeId === typeId && part.style === style)?.parcels ?? 0;
}
