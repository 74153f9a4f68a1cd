import type { CandidateCarton } from "#lib/cartons/choice/candidate-carton";
import { type CartonChoices, cartonChoices } from "#lib/cartons/choice/carton-choices";
import { USUAL_STOCK_MARGIN_PER_MILLE } from "#lib/cartons/choice/choice-request";
import { type DoubleBoxChoice, doubleBoxChoice } from "#lib/cartons/choice/double-box-choice";
import type { PackedLoad } from "#lib/cartons/cost/packed-load";
import { PIECES_SEARCHED_THROUGH, QUICK_EFFORT, USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { WrappedPiece } from "#lib/cartons/fit/fit-question";
import { loadTypeOf } from "#lib/cartons/strength/load-type";
import { USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
import { blockVolume } from "#lib/packing/block";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { pieceOfSizes } from "../../pack/listing/piece-of-sizes";
import { cutStep } from "../cut-step";
import type { CartonShelf } from "../read-carton-shelf";
import type { ShelfCarton } from "../shelf-carton";
import { wrappedPiece } from "../wrapped-type";
import type { AskedFit } from "./asked-fit";

const MINUTES_AN_HOUR = 60;
const VALUE_PER_MINOR = 10_000;

/** Which cartons would do, and what was taken for granted; or that nothing on the shelf fills a void. */
export type FitAnswer =
  | {
      readonly kind: "answered";
      readonly choices: CartonChoices;
      /** null where no carton goes into another with the gap */
      readonly doubleBox: DoubleBoxChoice | null;
      readonly style: CushionStyle;
      readonly cushionUm: number;
      readonly load: PackedLoad;
    }
  | { readonly kind: "no-fill"; readonly style: CushionStyle };

/** What of the shelf the answer is made from. */
export type FitGround = Pick<CartonShelf, "cartons" | "settings" | "habits" | "wrap" | "termsIn">;

/**
 * At most three cartons for some pieces: wrapped as usual where they are bare, with the usual cushion where none was said.
 *
 * @param asked pieces, and how they are packed
 * @param shelf cartons, habits and prices
 * @param usualStyle the shop's usual cushion style
 */
export function fitAnswer(asked: AskedFit, shelf: FitGround, usualStyle: CushionStyle): FitAnswer {
  const style = asked.style ?? usualStyle;
  const shop = shelf.termsIn(style);
  if (shop === null) return { kind: "no-fill", style };
  const { load, usualCushionUm } = askedLoad(asked, style, shelf);
  const cushionUm = asked.cushionUm ?? usualCushionUm;
  const { hourMinor, cutMinutes } = shelf.settings;
  const request = {
    load,
    clearance: { wallsUm: cushionUm, baseUm: cushionUm, topUm: cushionUm },
    candidates: shelf.cartons.map(candidateOf),
    terms: asked.massMg === null ? { ...shop.terms, postage: () => null } : shop.terms,
    loadType: loadTypeOf({ isFragile: asked.isFragile, isDense: false, fillsBox: false }),
    trust: USUAL_TRUST,
    // Beyond six pieces a hard look at every carton would take seconds.
    effort: load.pieces.length > PIECES_SEARCHED_THROUGH ? QUICK_EFFORT : USUAL_EFFORT,
  };
  const choices = cartonChoices({
    ...request,
    minuteValue: hourMinor === null ? null : (hourMinor * VALUE_PER_MINOR) / MINUTES_AN_HOUR,
    cut: { stepUm: cutStep(shelf.wrap.measures), minutes: cutMinutes },
    stockMarginPerMille: USUAL_STOCK_MARGIN_PER_MILLE,
  });
  const doubleBox = doubleBoxChoice({ ...request, gapUm: shelf.habits.boxGapUm });
  return { kind: "answered", choices, doubleBox, style, cushionUm, load };
}

/**
 * A carton of the shelf as one to choose; one without a price counts as costing nothing.
 *
 * @param carton a carton of the shelf
 */
export function candidateOf(carton: ShelfCarton): CandidateCarton {
  const { id, inside, boardUm, massMg, value, rating, supply, onHand, idle } = carton;
  return {
    id,
    inside,
    boardUm,
    massMg,
    value: value ?? 0,
    rating,
    condition: supply.boardUsed ? "reused" : "new",
    onHand,
    isSaved: supply.boardUsed,
    useFirst: supply.useFirst,
    ageing: idle.ageing,
  };
}

function askedLoad(
  asked: AskedFit,
  style: CushionStyle,
  { habits, wrap }: FitGround,
): { readonly load: PackedLoad; readonly usualCushionUm: number } {
  const parts = asked.pieces.map(({ count, um }) => {
    const [lengthUm, widthUm, heightUm] = um;
    if (!asked.areBare) {
      const block = { block: { lengthUm, widthUm, heightUm }, upright: asked.isUpright };
      return { count, blocks: [block], ml: blockVolume(block.block), wrapMg: 0 };
    }
    const piece = { ...pieceOfSizes("box", um), massMg: 0, thisSideUp: asked.isUpright };
    const wrapped = wrappedPiece(piece, style, wrap);
    return { count, blocks: wrapped.blocks, ml: wrapped.ml, wrapMg: wrapped.massMg ?? 0 };
  });
  const pieces = parts.flatMap(({ count, blocks }): readonly WrappedPiece[] =>
    Array.from({ length: count }, () => blocks).flat(),
  );
  const sum = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((all, part) => all + part.count * of(part), 0);
  return {
    load: {
      pieces,
      ml: sum(({ ml }) => ml),
      massMg: habits.papersMg + (asked.massMg ?? 0) + sum(({ wrapMg }) => wrapMg),
    },
    usualCushionUm: Math.round(habits.cushionUm.usual),
  };
}
