import { bodyBlock } from "#lib/packing/piece/piece-block";
import { bareLengthUnit, formatSizes, micrometres } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { cartonWords, tightWords } from "../../recipes/[id]/draft/draft-words";
import type { PieceForm } from "../../recipes/piece-forms";
import type { SizesAnswer } from "./sizes-answer";
import type { SizesQuestion } from "./sizes-question";

const FORM_WORDS: Readonly<Record<PieceForm, string>> = {
  round: "a round piece, hollow like a mug",
  box: "a solid block",
  flat: "a flat, solid piece",
  stemmed: "a glass on a stem: half of its height bowl, a thin stem, the foot nearly as wide",
};

/**
 * What a piece of which only the sizes are known was taken for, and the carton that it goes into.
 *
 * @param question the piece
 * @param draft the drafted card and its carton
 * @param nameOf the name of a supply
 * @param measures the shop's measures
 * @returns two sentences
 */
export function takenAsWords(
  { form, piece, pieces }: Pick<SizesQuestion, "form" | "piece" | "pieces">,
  draft: Extract<SizesAnswer, { readonly kind: "answered" }>["draft"],
  nameOf: (id: string) => string,
  measures: Measures,
): string {
  const { lengthUm, widthUm, heightUm } = bodyBlock(piece.body);
  const sizes = formatSizes([lengthUm, widthUm, heightUm].map(micrometres), measures);
  const many = pieces === 1 ? "" : `, ${pieces} in one parcel`;
  const carton =
    draft.askedUm === null
      ? cartonWords(draft, nameOf, measures)
      : tightWords(
          {
            cartonId: draft.carton.supplyId,
            room: { ...draft.recipe.room, kind: "too-tight", askedUm: draft.askedUm },
          },
          nameOf,
          measures,
        );
  return `Taken as ${FORM_WORDS[form]}, ${sizes} ${bareLengthUnit(measures)}${many}. ${carton}`;
}
