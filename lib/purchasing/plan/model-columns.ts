import type { ModelColumn, ModelTerm } from "#lib/optimisation/linear-model";
import type { ModelDraft } from "#lib/optimisation/model-draft";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSlot } from "#lib/purchasing/plan/plan-slots";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import type { SupplyReach } from "#lib/purchasing/plan/supply-reach";

/** A supply with its place in the question, and the use units that its stock columns count in. */
export type ModelSupply = {
  readonly index: number;
  readonly supply: PlanSupply;
  readonly reach: SupplyReach;
  /** stock columns count in so many use units, so that factors are near 1 */
  readonly scale: number;
  readonly slots: readonly ModelSlot[];
};

/** A slot with its number, which names its columns. */
export type ModelSlot = PlanSlot & { readonly number: number; readonly supplierIndex: number };

/**
 * What is minimised.
 * - cost: the plan's cost
 * - room: the peak of litres, while the cost stays within `mostMinor`
 * - relaxation: how far limits are exceeded, each as a share of itself, while nothing is owed that could be had
 */
export type ModelGoal =
  | { readonly kind: "cost" }
  | { readonly kind: "room"; readonly mostMinor: number }
  | { readonly kind: "relaxation" };

/** What the writers of rows share. */
export type ModelParts = {
  readonly question: PlanQuestion;
  readonly goal: ModelGoal;
  readonly supplies: readonly ModelSupply[];
  readonly slots: readonly ModelSlot[];
  readonly draft: ModelDraft;
};

/** Name of the column that counts the packs of one price tier of a slot. */
export const packsColumn = (slot: ModelSlot, tier: number): string => `n${slot.number}_${tier}`;

/** Name of the yes-or-no column that says whether a price tier of a slot is used. */
export const tierColumn = (slot: ModelSlot, tier: number): string => `t${slot.number}_${tier}`;

/** Whether a tier needs a yes-or-no column of its own: the first one is what is left of the order's. */
export const hasTierColumn = (slot: ModelSlot, tier: number): boolean =>
  tier > 0 || (slot.tiers[0]?.fromPacks ?? 1) > 1;

/** Name of the yes-or-no column of an order. */
export const orderColumn = (supplierIndex: number, week: number): string => `y${supplierIndex}_${week}`;

/** Name of the yes-or-no column of an order delivered for nothing. */
export const freeColumn = (supplierIndex: number, week: number): string => `z${supplierIndex}_${week}`;

/** Name of the column with an order's goods, in minor units. */
export const goodsColumn = (supplierIndex: number, week: number): string => `g${supplierIndex}_${week}`;

/** Names of a supply's stock columns at the end of a week: on hand, owed, and missing from the wanted stock. */
export const stockColumn = (
  kind: "hand" | "owed" | "missing" | "peak" | "lends",
  index: number,
  week: number,
) => `${kind[0]}${index}_${week}`;

/** Name of the column with what one supply does for another in a week, in units of the other. */
export const standInColumn = (substitute: number, week: number): string => `r${substitute}_${week}`;

/** Packs of a slot as terms, each pack counting `factor`. */
export function packTerms(slot: ModelSlot, factor: number): ModelTerm[] {
  return slot.tiers.map((_, tier) => [factor, packsColumn(slot, tier)]);
}

/** Slots that would be on the same order, order by order. */
export function slotsByOrder(slots: readonly ModelSlot[]): ModelSlot[][] {
  const orders = new Map<string, ModelSlot[]>();
  for (const slot of slots) {
    const name = orderColumn(slot.supplierIndex, slot.week);
    const same = orders.get(name);
    if (same === undefined) orders.set(name, [slot]);
    else same.push(slot);
  }
  return [...orders.values()];
}

/** The column that says by how much a limit is exceeded, counted as a share of the limit. */
export function relaxationColumn(
  of: "room" | "cash" | "least" | "most",
  index: number,
  limit: number,
): ModelColumn {
  const cost = 1 / Math.max(1, limit);
  return { name: goalColumn(of, index), kind: "real", lower: 0, upper: Number.POSITIVE_INFINITY, cost };
}

/** What begins the names of the columns that a goal other than cost minimises. */
export const GOAL = "w";

/** Name of the column with the peak of litres, or with how far a limit is exceeded. */
export const goalColumn = (of: "peak" | "room" | "cash" | "least" | "most", index = 0): string =>
  `${GOAL}_${of}${index}`;
