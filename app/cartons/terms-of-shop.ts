import type { CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { SupplyTerms } from "#lib/packing/card-sum";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import type { Habits } from "#lib/packing/habits";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { unitLength } from "#lib/packing/unit-length";
import type { Day } from "#lib/units/day";
import type { ListingPostage } from "../pack/listing/likely-postage";
import type { DraftShelf } from "../recipes/[id]/draft/draft-shelf";
import { expectedMinor } from "./expected-minor";

/** What packing costs by, what fills, and what of it is not known. */
export type ShopTerms = {
  readonly terms: CartonTerms;
  readonly fillName: string;
  /** what counts as nothing, as nobody wrote it down: "the price of Packing paper" */
  readonly notKnown: readonly string[];
};

/** What the terms are made from. */
export type TermsGround = {
  readonly habits: Habits;
  readonly shelf: DraftShelf;
  readonly supplies: SupplyTerms;
  readonly postage: ListingPostage;
  readonly today: Day;
  readonly bulgeUm: number;
};

/**
 * What packing into a carton costs in a style: bought again today, else at its cost in the books. Postage is expected
 * over a guessed spread of the weight and the shop's zones.
 *
 * @param style cushion style
 * @param ground habits, supplies with their prices, the rate card
 * @returns null where nothing on the shelf fills a void
 */
export function termsOfShop(style: CushionStyle, ground: TermsGround): ShopTerms | null {
  const { habits, shelf, supplies, postage, today, bulgeUm } = ground;
  const chosen = chosenSupplies(style, shelf.supplies);
  if (chosen.fill === null) return null;
  const fill = fillAmount(1, chosen.fill, habits, habits.fillManner);
  if (fill.kind === "no-fill") return null;
  const knownPrice = (supplyId: string) =>
    supplies.replacement.get(supplyId) ?? supplies.book.get(supplyId) ?? null;
  const priceOf = (supplyId: string) => knownPrice(supplyId) ?? 0;
  const tape = chosen.seal;
  const taken = tape === null ? [chosen.fill] : [chosen.fill, tape];
  const tapeUnit = tape === null ? null : unitLength(tape, habits.strips.lengthUm);
  const perUm = typeof tapeUnit === "number" && tapeUnit > 0 ? 1 / tapeUnit : 0;
  return {
    fillName: chosen.fill.name,
    notKnown: taken.flatMap(({ supplyId, name, massMg }) => [
      ...(knownPrice(supplyId) === null ? [`the price of ${name}`] : []),
      ...(massMg === null ? [`the weight of ${name}`] : []),
    ]),
    terms: {
      fill: {
        mlPerUnit: fill.mlPerUnit,
        massMg: chosen.fill.massMg ?? 0,
        value: priceOf(chosen.fill.supplyId),
      },
      tape: {
        pattern: habits.closing,
        legs: habits.legs,
        factor: habits.tapeFactor,
        massMgPerUm: (tape?.massMg ?? 0) * perUm,
        valuePerUm: tape === null ? 0 : priceOf(tape.supplyId) * perUm,
      },
      bulgeUm,
      postage: (massMg, size) => expectedMinor(massMg, size, postage, today),
    },
  };
}
