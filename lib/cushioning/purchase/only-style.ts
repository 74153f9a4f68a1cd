import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import type { CushionStyle } from "#lib/packing/recipe-version";

/**
 * The same question with each type packed in one style, where it has a recipe in that.
 *
 * @param question all of the mix
 * @param style cushion style
 * @returns the question, and the types without the style, which keep all their ways
 */
export function onlyStyle(
  question: MixQuestion,
  style: CushionStyle,
): { readonly question: MixQuestion; readonly keptTypeIds: readonly string[] } {
  const types = question.types.map((type) => {
    const ways = type.ways.filter((way) => way.style === style);
    return { type, ways };
  });
  return {
    question: {
      ...question,
      types: types.map(({ type, ways }) => (ways.length === 0 ? type : { ...type, ways })),
    },
    keptTypeIds: types.filter(({ ways }) => ways.length === 0).map(({ type }) => type.id),
  };
}
