import type { Block } from "#lib/packing/block";
import type { DraftSupply } from "#lib/packing/draft-supply";
import type { Habits } from "#lib/packing/habits";
import type { PieceBody } from "#lib/packing/piece/piece";
import type { SupplyJob } from "#lib/packing/recipe/chosen-supplies";
import { type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { lengthInTheory } from "#lib/packing/recipe/theory-text";
import { wrapAmount } from "#lib/packing/recipe/wrap-amount";
import { blockWrap } from "#lib/packing/wrap/block-wrap";
import { formatAmount } from "#lib/units/amount-text";
import type { Measures } from "#lib/units/measures";

/** A thinner layer adds nothing that a ruler sees. */
const SEEN_FROM_UM = 250;

/**
 * A wrap round a piece as a step: the strip in theory, what is taken of the supply, and how.
 *
 * @param wrap - job, words, supply, whole layers from 1; the shape and the block that it goes round, in micrometres
 * @param habits - overlap and end margin
 * @param measures - the shop's measures, for the words
 * @returns the step, taken for each piece
 * @throws RangeError if the supply is no wrap or a size is not above zero
 * @example wrapStep({ job: "cushion", words: "Wrap in bubble", supply: bubble, layers: 2, shape: "cylinder", block },
 *   USUAL_HABITS, "imperial").theory // "32.6 × 9.5 in"
 */
export function wrapStep(
  wrap: {
    readonly job: SupplyJob;
    readonly words: string;
    readonly supply: DraftSupply;
    readonly layers: number;
    readonly shape: PieceBody["kind"];
    readonly block: Block;
  },
  habits: Pick<Habits, "overlapUm" | "endMarginUm">,
  measures: Measures,
): UnplacedStep {
  const { job, words, supply, layers, shape, block } = wrap;
  const thickUm = supply.form.kind === "loose" ? 0 : supply.form.thickUm;
  const need = blockWrap(shape, block, { ...habits, layers, thickUm });
  const { amount, usedUm } = wrapAmount(supply, need, "whole");
  const say = (um: number): string => lengthInTheory(um, measures);
  const theory = `${say(need.lengthUm)} × ${say(need.wishedWidthUm)}`;
  const taken = formatAmount(amount, supply.useUnit);
  const end = usedUm === null ? taken : `${taken}, ${say(usedUm)} of the roll`;
  const turns = layers === 1 ? "1 layer" : `${layers} layers`;
  const thick = thickUm < SEEN_FROM_UM ? "" : ` of ${say(thickUm)}`;
  const round = `${turns}${thick} round ${say(block.lengthUm)} × ${say(block.widthUm)} × ${say(block.heightUm)}`;
  const reason = `${round}, with ${say(need.overlapUm)} overlap: ${theory}; taken: ${end}.`;
  return unplacedStep({ job, words, supply, amount, per: "piece", theory, reason });
}
