import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillBulk } from "#lib/packing/fill/fill-bulk";
import type { Habits } from "#lib/packing/habits";
import type { Piece } from "#lib/packing/piece/piece";
import { MATERIAL_WORDS, type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { lengthInTheory } from "#lib/packing/recipe/theory-text";
import { wrapAmount } from "#lib/packing/recipe/wrap-amount";
import { type GuardWrap, guardWraps } from "#lib/packing/wrap/guard-wraps";
import { sumAmounts } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import type { Measures } from "#lib/units/measures";

/**
 * The guards of a piece as steps: the stem, what sticks out, the rims.
 *
 * @param piece - the piece
 * @param supply - what guards, sheets or a roll
 * @param habits - guard layers, overlap, ring width, bulk
 * @param measures - the shop's measures, for the words
 * @returns steps taken for each piece, and the number of guards
 * @throws RangeError if the supply is no wrap
 * @example guardSteps(mugWithHandle, smallBubble, USUAL_HABITS, "imperial").steps[0]?.words
 *   // "Pad the handle with bubble"
 */
export function guardSteps(
  piece: Piece,
  supply: DraftSupply,
  habits: Habits,
  measures: Measures,
): { readonly steps: readonly UnplacedStep[]; readonly guards: number } {
  const guards = guardWraps(piece, {
    layers: habits.guardLayers,
    overlapUm: habits.overlapUm,
    rimWidthUm: habits.rimWidthUm,
    bulkUm: padThickness(supply, habits),
  });
  const material = MATERIAL_WORDS[supply.material];
  const groups = [
    {
      of: guards.filter((each) => each.guards === "stem"),
      words: `Wind the stem in ${material} until it is as wide as the foot`,
    },
    {
      of: guards.filter((each) => each.guards !== "stem" && each.guards !== "rim"),
      words: padWords(guards, material),
    },
    { of: guards.filter((each) => each.guards === "rim"), words: `Put a ring of ${material} round each rim` },
  ];
  const steps = groups
    .filter(({ of }) => of.length > 0)
    .map(({ of, words }) => groupStep(of, words, supply, measures));
  return { steps, guards: guards.length };
}

/**
 * How thick a layer of a guard lies: film as it is, sheets as they are twisted and crumpled.
 *
 * @param supply - what guards
 * @param habits - bulk of loosely crumpled sheets
 * @returns micrometres, zero where it has no thickness
 * @example padThickness(smallBubble, USUAL_HABITS) // 4762.5
 */
export function padThickness(supply: DraftSupply, habits: Pick<Habits, "bulkUm">): number {
  const { form } = supply;
  if (form.kind === "loose") return 0;
  const crumpled = form.kind === "sheet" ? fillBulk(supply, habits, "loose") : null;
  return crumpled ?? form.thickUm;
}

function groupStep(
  guards: readonly GuardWrap[],
  words: string,
  supply: DraftSupply,
  measures: Measures,
): UnplacedStep {
  const amount = sumAmounts(guards.map(({ need }) => wrapAmount(supply, need, "halves").amount));
  const theory = guards
    .map(
      ({ need }) => `${lengthInTheory(need.lengthUm, measures)} × ${lengthInTheory(need.widthUm, measures)}`,
    )
    .join(" + ");
  const reason = `${theory}; taken: ${formatAmount(amount, supply.useUnit)}.`;
  return unplacedStep({ job: "guard", words, supply, amount, per: "piece", theory, reason });
}

/** "Pad the handle and the spout with bubble", "Pad the handles with bubble". */
function padWords(guards: readonly GuardWrap[], material: string): string {
  const parts = guards.map((each) => each.guards).filter((part) => part !== "stem" && part !== "rim");
  const named = [...new Set(parts)].map((part) => {
    const word = part === "other" ? "part that sticks out" : part;
    if (parts.filter((each) => each === part).length === 1) return `the ${word}`;
    return `the ${plural(word)}`;
  });
  const last = named.at(-1) ?? "";
  const list = named.length < 2 ? last : `${named.slice(0, -1).join(", ")} and ${last}`;
  return `Pad ${list} with ${material}`;
}

function plural(word: string): string {
  if (word === "foot") return "feet";
  return word === "part that sticks out" ? "parts that stick out" : `${word}s`;
}
