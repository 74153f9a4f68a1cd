import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { orderWeek } from "#lib/cushioning/purchase/order-week";
import type { UndoneWeights } from "#lib/cushioning/purchase/undone-weights";
import type { LinearModel, ModelTerm } from "#lib/optimisation/linear-model";
import { type ModelDraft, modelDraft } from "#lib/optimisation/model-draft";
import { limitRows } from "#lib/purchasing/plan/limit-rows";
import { type ModelSupply, packTerms } from "#lib/purchasing/plan/model-columns";
import { orderRows } from "#lib/purchasing/plan/order-rows";
import { type PlanModel, planParts } from "#lib/purchasing/plan/plan-model";

/**
 * What is minimised.
 * - weighed: the total, with a sum for each parcel unpacked and each supply below what is to be kept
 * - parcels: those that stay unpacked
 * - share: units below what is to be kept, as a sum of shares, with at most so many parcels unpacked
 * - cost: the total, with at most so much undone
 */
export type MixGoal =
  | { readonly kind: "weighed"; readonly weights: UndoneWeights }
  | { readonly kind: "parcels" }
  | { readonly kind: "share"; readonly mostParcels: number }
  | { readonly kind: "cost"; readonly mostParcels: number; readonly mostShare: number };

/** The mix as a linear model, with what is needed to read its answer. */
export type MixModel = PlanModel & { readonly mix: MixQuestion; readonly mixGoal: MixGoal };

/** Name of the column with the parcels of a type that are packed in one of its ways. */
export const parcelsColumn = (type: number, way: number): string => `x${type}_${way}`;

/** Name of the column with the parcels of a type that stay unpacked; there is none where all must be packed. */
export const unpackedColumn = (type: number): string => `u${type}`;

/** Name of the column with what is left of a supply as far as it is worth something, in its scale. */
export const leftColumn = (supply: number): string => `v${supply}`;

/** Name of the column with what is left of a supply beyond what is worth anything; none where all of it is. */
export const beyondColumn = (supply: number): string => `z${supply}`;

/** Name of the column with what a supply is below what is to be kept, in its scale; none where it must be kept. */
export const belowColumn = (supply: number): string => `k${supply}`;

const INFINITE = Number.POSITIVE_INFINITY;
/** Room for the rounding of sums, far below what counts as a difference when plans are ranked. */
const SLACK = 1e-7;

/**
 * The mix as one mixed-integer model in minor units: whole packs by price step, deliveries, thresholds, cash and room as
 * in the purchase plan; for each type the parcels by way, which need not be whole; and what is left of each supply.
 *
 * @param question all of the mix, checked
 * @param goal what is minimised
 * @returns the model with its slots and supplies
 */
export function mixModel(question: MixQuestion, goal: MixGoal): MixModel {
  const draft = modelDraft();
  const week = orderWeek(question);
  const parts = { question: week, goal: { kind: "cost" } as const, ...planParts(week), draft };
  orderRows(parts);
  limitRows(parts);
  typeRows(draft, question, goal);
  for (const of of parts.supplies) supplyRow(draft, question, goal, of);
  undoneRows(draft, question, goal, parts.supplies);
  const model = goalModel(draft.model(), question, goal, parts.supplies);
  const { goal: orderGoal, slots, supplies } = parts;
  return { question: week, goal: orderGoal, slots, supplies, model, mix: question, mixGoal: goal };
}

const mayLeave = (goal: MixGoal): boolean =>
  goal.kind === "weighed" || goal.kind === "parcels" || goal.mostParcels > 0;
const mayFallBelow = (goal: MixGoal): boolean => goal.kind !== "cost" || goal.mostShare > 0;

function typeRows(draft: ModelDraft, { types }: MixQuestion, goal: MixGoal): void {
  types.forEach(({ parcels, ways }, type) => {
    const terms = ways.map(({ sendMinor, otherMinor }, way): ModelTerm => {
      const name = parcelsColumn(type, way);
      draft.column({ name, kind: "real", lower: 0, upper: parcels, cost: sendMinor + otherMinor });
      return [1, name];
    });
    if (mayLeave(goal)) {
      const name = unpackedColumn(type);
      draft.column({ name, kind: "real", lower: 0, upper: parcels, cost: 0 });
      terms.push([1, name]);
    }
    draft.row("parcels", parcels, terms, parcels);
  });
}

/** What is left = on hand + bought - taken, never below nothing. */
function supplyRow(
  draft: ModelDraft,
  { types, supplies }: MixQuestion,
  goal: MixGoal,
  of: ModelSupply,
): void {
  const { index, scale, slots } = of;
  const { id, stock, wanted, endValueMinor } = of.supply;
  const worthUpTo = supplies[index]?.worthUpTo ?? INFINITE;
  const name = leftColumn(index);
  draft.column({ name, kind: "real", lower: 0, upper: worthUpTo / scale, cost: -endValueMinor * scale });
  const left: ModelTerm[] = [[1, name]];
  if (worthUpTo < INFINITE) {
    const beyond = beyondColumn(index);
    draft.column({ name: beyond, kind: "real", lower: 0, upper: INFINITE, cost: 0 });
    left.push([1, beyond]);
  }
  const taken = types.flatMap(({ ways }, type) =>
    ways.flatMap(({ takes }, way): ModelTerm[] => {
      const units = takes.find(({ supplyId }) => supplyId === id)?.units ?? 0;
      return units === 0 ? [] : [[units / scale, parcelsColumn(type, way)]];
    }),
  );
  const bought = slots.flatMap((slot) => packTerms(slot, -slot.offer.unitsPerPack / scale));
  draft.row("left", stock / scale, [...left, ...taken, ...bought], stock / scale);
  const keep = wanted[0] ?? 0;
  if (keep === 0) return;
  const terms = [...left];
  if (mayFallBelow(goal)) {
    const below = belowColumn(index);
    draft.column({ name: below, kind: "real", lower: 0, upper: keep / scale, cost: 0 });
    terms.push([1, below]);
  }
  draft.row("keep", keep / scale, terms, INFINITE);
}

/** At most so much undone as was found to be the least. */
function undoneRows(
  draft: ModelDraft,
  question: MixQuestion,
  goal: MixGoal,
  supplies: readonly ModelSupply[],
): void {
  if (goal.kind === "weighed" || goal.kind === "parcels") return;
  const most = (name: string, terms: readonly ModelTerm[], limit: number) =>
    draft.row(name, Number.NEGATIVE_INFINITY, terms, limit + SLACK);
  if (mayLeave(goal)) most("unpacked", unpackedTerms(question), goal.mostParcels);
  if (goal.kind === "cost" && mayFallBelow(goal)) most("below", belowTerms(supplies), goal.mostShare);
}

const unpackedTerms = ({ types }: MixQuestion): ModelTerm[] =>
  types.map((_, type): ModelTerm => [1, unpackedColumn(type)]);

function belowTerms(supplies: readonly ModelSupply[]): ModelTerm[] {
  return supplies.flatMap(({ index, scale, supply }): ModelTerm[] => {
    const keep = supply.wanted[0] ?? 0;
    return keep > 0 ? [[scale / keep, belowColumn(index)]] : [];
  });
}

/** What is undone takes the place of the cost where that is the goal, or is added to it with its weights. */
function goalModel(
  model: LinearModel,
  question: MixQuestion,
  goal: MixGoal,
  supplies: readonly ModelSupply[],
): LinearModel {
  if (goal.kind === "cost") return model;
  const { parcel, share } = goal.kind === "weighed" ? goal.weights : { parcel: 1, share: 1 };
  const costs = new Map<string, number>();
  if (goal.kind !== "share")
    for (const [factor, name] of unpackedTerms(question)) costs.set(name, factor * parcel);
  if (goal.kind !== "parcels")
    for (const [factor, name] of belowTerms(supplies)) costs.set(name, factor * share);
  const columns = model.columns.map((column) => {
    const kept = goal.kind === "weighed" ? column.cost : 0;
    return { ...column, cost: costs.get(column.name) ?? kept };
  });
  return { ...model, columns };
}
