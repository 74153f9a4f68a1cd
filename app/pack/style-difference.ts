import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import { packedWeightUpTo } from "#lib/packing/weight/packed-weight";
import { unitsOf } from "#lib/units/amount";
import { expectedWeight } from "./expected-weight";
import { filledCard } from "./filled-card";
import type { PackingChoices } from "./packing-choices";
import type { PackingDraft } from "./packing-draft";
import { listsTo } from "./step-prices";
import { type WeightOutlook, weightOutlook } from "./weight-outlook";

/** A postage step that a parcel may pay. */
export type StepShare = { readonly label: string; readonly chance: number };

/** The parcel on the bench in one style; money in minor units, not rounded. */
export type BenchWay = {
  readonly style: CushionStyle;
  readonly materialsMinor: number;
  readonly postageMinor: number;
  /** the likely weight, milligrams */
  readonly likelyMg: number;
  /** lightest first */
  readonly steps: readonly StepShare[];
};

const VALUE_PER_MINOR = 10_000;
/** Chances that nobody would act on. */
const LEAST_CHANCE = 0.005;

/**
 * The parcel on the bench as it is, and what it would be by its card in each other style.
 *
 * @param draft the parcel on the bench
 * @param outlook what it may weigh as it is
 * @param choices recipes, prices, weights and postage
 * @returns the present way first; empty where weight, prices or postage are not known, or there is no other card
 */
export function styleDifference(
  draft: PackingDraft,
  outlook: WeightOutlook | null,
  choices: PackingChoices,
): readonly BenchWay[] {
  const here = wayOf(draft, outlook, choices);
  if (here === null) return [];
  const others = CUSHION_STYLES.flatMap((style): BenchWay[] => {
    if (style === draft.style || !hasCards(draft, style, choices)) return [];
    const other = filledCard({ ...draft, style }, choices);
    const way = wayOf(other, weightOutlook(other, expectedWeight(other, choices), choices), choices);
    return way === null ? [] : [way];
  });
  return others.length === 0 ? [] : [here, ...others];
}

/** Whether each piece has a card in the style; else it would be packed by another one unasked. */
function hasCards(draft: PackingDraft, style: CushionStyle, { recipes }: PackingChoices): boolean {
  return (
    draft.pieces.length > 0 &&
    draft.pieces.every(({ itemTypeId }) =>
      recipes.some((recipe) => recipe.itemTypeId === itemTypeId && recipe.style === style),
    )
  );
}

function wayOf(
  draft: PackingDraft,
  outlook: WeightOutlook | null,
  { unitPrices, stepPrices }: PackingChoices,
): BenchWay | null {
  if (outlook === null || stepPrices === null) return null;
  const materials = materialsOf(draft, unitPrices);
  if (materials === null) return null;
  const chances = new Map<string, number>();
  let paid = 0;
  let carried = 0;
  for (const { share, steps } of listsTo(stepPrices, draft.cartons[0]?.supplyId ?? null, draft.zoneId)) {
    let reached = 0;
    for (const { upToMg, minor, label } of steps) {
      const upTo = upToMg === Number.POSITIVE_INFINITY ? 1 : packedWeightUpTo(outlook.weight, upToMg);
      const chance = share * (upTo - reached);
      reached = upTo;
      chances.set(label, (chances.get(label) ?? 0) + chance);
      if (minor === null) continue;
      paid += chance * minor;
      carried += chance;
    }
  }
  if (!(carried > 0)) return null;
  return {
    style: draft.style,
    materialsMinor: materials,
    postageMinor: paid / carried,
    likelyMg: outlook.weight.likelyMg,
    steps: [...chances].flatMap(([label, chance]) => (chance < LEAST_CHANCE ? [] : [{ label, chance }])),
  };
}

/** Bought again today; null where a price is not known. */
function materialsOf(draft: PackingDraft, prices: PackingChoices["unitPrices"]): number | null {
  const taken = [
    ...draft.lines.map(({ supplyId, amount }) => ({ supplyId, units: unitsOf(amount) })),
    ...draft.cartons.map(({ supplyId }) => ({ supplyId: supplyId ?? "", units: supplyId === null ? 0 : 1 })),
  ];
  let value = 0;
  for (const { supplyId, units } of taken) {
    const price = units === 0 ? 0 : prices[supplyId];
    if (price === undefined) return null;
    value += units * price;
  }
  return value / VALUE_PER_MINOR;
}
