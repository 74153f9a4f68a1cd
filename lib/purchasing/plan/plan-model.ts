import type { LinearModel, ModelTerm } from "#lib/optimisation/linear-model";
import { modelDraft } from "#lib/optimisation/model-draft";
import { coverRows } from "#lib/purchasing/plan/cover-rows";
import { limitRows } from "#lib/purchasing/plan/limit-rows";
import { GOAL, type ModelGoal, type ModelParts } from "#lib/purchasing/plan/model-columns";
import { orderRows } from "#lib/purchasing/plan/order-rows";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { type PlanSlot, planSlots } from "#lib/purchasing/plan/plan-slots";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import { stockRows } from "#lib/purchasing/plan/stock-rows";
import { supplyReach } from "#lib/purchasing/plan/supply-reach";
import { supplyRows } from "#lib/purchasing/plan/supply-rows";

/** The purchase plan as a linear model, with what is needed to read its answer. */
export type PlanModel = Omit<ModelParts, "draft"> & { readonly model: LinearModel };

/**
 * The whole purchase plan as one mixed-integer model in minor units.
 *
 * @param question all of the plan
 * @param goal what is minimised, "cost" unless said
 * @returns the model with its slots
 */
export function planModel(question: PlanQuestion, goal: ModelGoal = { kind: "cost" }): PlanModel {
  const draft = modelDraft();
  const { slots, supplies } = planParts(question, goal.kind === "relaxation" ? roomy(question) : question);
  const parts = { question, goal, slots, supplies, draft };
  orderRows(parts);
  stockRows(parts);
  limitRows(parts);
  coverRows(parts);
  if (goal.kind === "cost") supplyRows(parts);
  return { question, goal, supplies, slots, model: goalModel(draft.model(), goal) };
}

/** For the room goal the cost becomes a row; for relaxations it does not matter. */
function goalModel(model: LinearModel, goal: ModelGoal): LinearModel {
  if (goal.kind === "cost") return model;
  const isGoal = (name: string) => name.startsWith(GOAL);
  const columns = model.columns.map((column) => (isGoal(column.name) ? column : { ...column, cost: 0 }));
  if (goal.kind === "relaxation") return { columns, rows: model.rows };
  const terms = model.columns
    .filter(({ name, cost }) => cost !== 0 && !isGoal(name))
    .map(({ name, cost }): ModelTerm => [cost, name]);
  const most = { name: "mostcost", terms, lower: Number.NEGATIVE_INFINITY, upper: goal.mostMinor };
  return { columns, rows: [...model.rows, most] };
}

/** The same question with a most stock that holds nothing back which is of use. */
function roomy(question: PlanQuestion): PlanQuestion {
  const supplies = question.supplies.map((supply) => {
    const packs = question.offers.filter(({ supplyId }) => supplyId === supply.id);
    const pack = Math.max(
      0,
      ...packs.map(({ unitsPerPack, steps }) => unitsPerPack * (steps?.[0]?.fromPacks ?? 1)),
    );
    const needed = Math.max(0, ...supplyReach(question, supply).needed);
    return {
      ...supply,
      most: supply.most.map((most) => Math.max(most, 2 * pack + needed)),
      endValueMinor: 0,
    };
  });
  return { ...question, supplies };
}

/**
 * The slots of a question, numbered, and its supplies with their own.
 *
 * @param question all of the plan
 * @param allowed the same question, with the stock that slots may fill up to
 * @returns slots and supplies
 */
export function planParts(
  question: PlanQuestion,
  allowed = question,
): Pick<ModelParts, "slots" | "supplies"> {
  const place = new Map(question.suppliers.map(({ id }, index) => [id, index]));
  const slots = planSlots(allowed).map((slot, number) => {
    return { ...slot, number, supplierIndex: place.get(slot.supplier.id) ?? -1 };
  });
  const supplies = question.supplies.map((supply, index) => {
    const own = slots.filter((slot) => slot.supply.id === supply.id);
    const reach = supplyReach(question, supply);
    return { index, supply, reach, slots: own, scale: scaleOf(supply, own) };
  });
  return { slots, supplies };
}

function scaleOf(supply: PlanSupply, slots: readonly PlanSlot[]): number {
  const packs = slots.map(({ offer }) => offer.unitsPerPack).toSorted((a, b) => a - b);
  return packs[Math.floor(packs.length / 2)] ?? Math.max(1, ...supply.use);
}
