import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import {
  freeColumn,
  goodsColumn,
  hasTierColumn,
  type ModelSlot,
  type ModelSupply,
  orderColumn,
  packsColumn,
  standInColumn,
  stockColumn,
  tierColumn,
} from "#lib/purchasing/plan/model-columns";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { PlanModel } from "#lib/purchasing/plan/plan-model";

/**
 * A plan as values of the model's columns, for the solver to begin with.
 *
 * @param model the model
 * @param choice a sound plan for its question
 * @returns a value for every column
 */
export function planStart(model: PlanModel, choice: PlanChoice): Record<string, number> {
  const plan = costedPlan(model.question, choice);
  const values = new Map<string, number>();
  const packs = new Map(choice.lines.map((line) => [`${line.week} ${line.offerId}`, line.packs]));
  for (const slot of model.slots) setSlot(values, slot, packs.get(`${slot.week} ${slot.offer.id}`) ?? 0);
  for (const order of plan.orders) {
    const supplier = model.question.suppliers.findIndex(({ id }) => id === order.supplierId);
    values.set(orderColumn(supplier, order.week), 1);
    values.set(goodsColumn(supplier, order.week), order.goodsMinor);
    values.set(freeColumn(supplier, order.week), order.deliveryMinor === 0 ? 1 : 0);
  }
  model.supplies.forEach((of, index) => {
    const path = plan.stock[index];
    if (path !== undefined) setStock(values, of, path.after, path.end);
  });
  setStandIns(values, model, choice);
  return Object.fromEntries(model.model.columns.map(({ name }) => [name, values.get(name) ?? 0]));
}

function setSlot(values: Map<string, number>, slot: ModelSlot, packs: number): void {
  if (packs === 0) return;
  const reached = slot.tiers.findIndex(({ fromPacks, toPacks }) => fromPacks <= packs && packs <= toPacks);
  values.set(packsColumn(slot, reached), packs);
  if (hasTierColumn(slot, reached)) values.set(tierColumn(slot, reached), 1);
}

function setStock(
  values: Map<string, number>,
  { supply, scale, index }: ModelSupply,
  after: readonly number[],
  end: readonly number[],
): void {
  end.forEach((units, week) => {
    values.set(stockColumn("hand", index, week), Math.max(0, units) / scale);
    values.set(stockColumn("owed", index, week), Math.max(0, -units) / scale);
    values.set(stockColumn("missing", index, week), Math.max(0, (supply.wanted[week] ?? 0) - units) / scale);
    values.set(stockColumn("peak", index, week), Math.max(0, after[week] ?? 0) / scale);
  });
}

function setStandIns(
  values: Map<string, number>,
  { question, supplies }: PlanModel,
  choice: PlanChoice,
): void {
  for (const { fromSupplyId, toSupplyId, week, units } of choice.standIns) {
    const index = question.substitutes.findIndex(
      (each) => each.fromSupplyId === fromSupplyId && each.toSupplyId === toSupplyId,
    );
    const to = supplies.find(({ supply }) => supply.id === toSupplyId);
    const from = supplies.find(({ supply }) => supply.id === fromSupplyId);
    if (to === undefined || from === undefined) continue;
    const column = standInColumn(index, week);
    values.set(column, (values.get(column) ?? 0) + units / to.scale);
    values.set(stockColumn("lends", from.index, week), 1);
  }
}

/**
 * The plan that a solver's values mean: packs rounded to whole ones, stand-ins cleared of the solver's dust.
 *
 * @param model the model
 * @param values a value for every column
 * @returns packs by offer and week, stand-ins
 */
export function choiceOfValues(model: PlanModel, values: Readonly<Record<string, number>>): PlanChoice {
  const lines = model.slots.flatMap((slot) => {
    const packs = slot.tiers.reduce(
      (sum, _, tier) => sum + Math.round(values[packsColumn(slot, tier)] ?? 0),
      0,
    );
    return packs > 0 ? [{ offerId: slot.offer.id, week: slot.week, packs }] : [];
  });
  const standIns = model.question.substitutes.flatMap(({ fromSupplyId, toSupplyId }, index) => {
    const scale = model.supplies.find(({ supply }) => supply.id === toSupplyId)?.scale ?? 1;
    return Array.from({ length: model.question.weeks }, (_, week) => {
      const units = Math.max(0, values[standInColumn(index, week)] ?? 0) * scale;
      return { fromSupplyId, toSupplyId, week, units: Math.round(units * 1e6) / 1e6 };
    }).filter(({ units }) => units > STAND_IN_DUST);
  });
  return { lines, standIns };
}

const STAND_IN_DUST = 1e-5;
