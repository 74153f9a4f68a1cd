import { bareLengthUnit, formatSizes, micrometres } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { acceptable, refusalWords, tightWords } from "../../recipes/[id]/draft/draft-words";
import type { SupplyChoice } from "../packing-choices";
import type { SizesAnswer } from "./sizes-answer";

type NoDraft = Extract<SizesAnswer, { readonly kind: "no-draft" }>;

/**
 * Why a piece can't be packed with what is on the shelf, and what would do.
 *
 * @param outcome what came of drafting, with the inside that would do
 * @param choices supplies with their names, and the shop's measures
 * @returns the field to mend, and a few sentences
 */
export function refusedDraftWords(
  { draft, needed }: NoDraft,
  {
    supplies,
    measures,
  }: {
    readonly supplies: readonly Pick<SupplyChoice, "id" | "name">[];
    readonly measures: Measures;
  },
): { readonly field: "sizes" | "carton" | "style"; readonly words: string } {
  const nameOf = (id: string) => supplies.find((supply) => supply.id === id)?.name ?? id;
  const refusal = refusalWords(draft, nameOf, measures);
  switch (draft.kind) {
    case "piece-problems":
      return { field: "sizes", words: refusal };
    case "unsuited-supply":
      return { field: "style", words: refusal };
    case "no-outer":
      return { field: "carton", words: refusal };
    case "no-carton": {
      const near = acceptable(draft.tight).slice(0, 1);
      const shown = near.length > 0 ? near : draft.tight.slice(-1);
      const tight = shown.map((each) => `${tightWords(each, nameOf, measures)} `).join("");
      const none = draft.tight.length === 0 ? `${refusal} ` : "";
      const inside =
        needed === null ? "" : `One of ${sizesWords(needed, measures)} inside, or larger, would do.`;
      return { field: "carton", words: `${none}${tight}${inside}`.trim() };
    }
    default:
      return draft satisfies never;
  }
}

function sizesWords(block: NonNullable<NoDraft["needed"]>, measures: Measures): string {
  const sides = [block.lengthUm, block.widthUm, block.heightUm].map((um) => micrometres(Math.round(um)));
  return `${formatSizes(sides, measures)} ${bareLengthUnit(measures)}`;
}
