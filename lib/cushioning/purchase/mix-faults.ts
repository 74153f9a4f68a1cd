import type { CostedMix } from "#lib/cushioning/purchase/costed-mix";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { orderWeek } from "#lib/cushioning/purchase/order-week";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { type PlanFault, planFaults } from "#lib/purchasing/plan/plan-faults";

/** Something that a mix breaks, where, and by how much in its own unit; `order` has what the orders break. */
export type MixFault =
  | { readonly kind: "order"; readonly at: string; readonly by: number; readonly what: PlanFault["kind"] }
  | {
      readonly kind: "cash" | "room" | "parcels" | "stock" | "undone" | "costs";
      readonly at: string;
      readonly by: number;
    };

/** Share by which stock may be off: what a solver calls whole may be off by a millionth of a pack. */
const TINY = 1e-5;
/** Share by which sums may be off that both sides work out. */
const ROUNDING = 1e-9;

/**
 * Holds a mix against every rule of its question: orders by the faults of a purchase plan, and parcels, stock, cash,
 * room and sums worked out here again, by code that neither writes the model nor costs the mix.
 *
 * @param question all of the mix
 * @param mix a mix for it
 * @returns what is broken; empty for a sound mix
 */
export function mixFaults(question: MixQuestion, mix: CostedMix): MixFault[] {
  return [
    ...orderFaults(question, mix),
    ...limitFaults(question, mix),
    ...parcelFaults(question, mix),
    ...stockFaults(question, mix),
    ...costFaults(question, mix),
  ];
}

function orderFaults(question: MixQuestion, { orders }: CostedMix): MixFault[] {
  const week = orderWeek({ ...question, limits: { cashMinor: null, litres: null } });
  const lines = orders.flatMap((order) =>
    order.lines.map(({ offerId, packs }) => ({ offerId, packs, week: 0 })),
  );
  const plan = costedPlan(week, { lines, standIns: [] });
  const told = { ...plan, orders: orders.map((order) => ({ ...order, week: 0 })) };
  return planFaults(week, told).map(({ kind, at, by }) => ({ kind: "order", what: kind, at, by }));
}

function boughtOf(question: MixQuestion, { orders }: CostedMix, supplyId: string): number {
  let units = 0;
  for (const { lines } of orders) {
    for (const { offerId, packs } of lines) {
      const offer = question.offers.find(({ id }) => id === offerId);
      if (offer?.supplyId === supplyId) units += packs * offer.unitsPerPack;
    }
  }
  return units;
}

function limitFaults(question: MixQuestion, mix: CostedMix): MixFault[] {
  const faults: MixFault[] = [];
  const cash = question.limits.cashMinor ?? Number.POSITIVE_INFINITY;
  const spent = mix.orders.reduce((sum, order) => sum + order.goodsMinor + order.deliveryMinor, 0);
  if (!(spent <= cash)) faults.push({ kind: "cash", at: "goods and delivery", by: spent - cash });
  let there = 0;
  let comes = 0;
  for (const { id, litresPerUnit, onHand } of question.supplies) {
    there += onHand * litresPerUnit;
    comes += boughtOf(question, mix, id) * litresPerUnit;
  }
  if (differ(there + comes, mix.litres)) faults.push({ kind: "room", at: "litres told", by: mix.litres });
  const room = Math.max(there, question.limits.litres ?? Number.POSITIVE_INFINITY);
  const by = there + comes - room;
  if (by > TINY * Math.max(1, room)) faults.push({ kind: "room", at: "after delivery", by });
  return faults;
}

function parcelFaults(question: MixQuestion, mix: CostedMix): MixFault[] {
  const faults: MixFault[] = [];
  for (const { id, parcels, ways } of question.types) {
    let packed = 0;
    const seen = new Set<string>();
    for (const part of mix.split.filter(({ typeId }) => typeId === id)) {
      const at = `${id} in ${part.style}`;
      const isKnown = ways.some(({ style }) => style === part.style) && !seen.has(part.style);
      seen.add(part.style);
      if (!isKnown || !(part.parcels >= 0)) faults.push({ kind: "parcels", at, by: part.parcels });
      packed += part.parcels;
    }
    const open = mix.unpacked.find(({ typeId }) => typeId === id)?.parcels ?? 0;
    if (open < 0 || differ(packed + open, parcels)) {
      faults.push({ kind: "parcels", at: id, by: packed + open - parcels });
    }
  }
  const strange = mix.split.find(({ typeId }) => question.types.every(({ id }) => id !== typeId));
  if (strange !== undefined) faults.push({ kind: "parcels", at: strange.typeId, by: strange.parcels });
  return faults;
}

function usedOf(question: MixQuestion, mix: CostedMix, supplyId: string): number {
  let units = 0;
  for (const { typeId, style, parcels } of mix.split) {
    const way = question.types.find(({ id }) => id === typeId)?.ways.find((each) => each.style === style);
    for (const taken of way?.takes ?? []) if (taken.supplyId === supplyId) units += taken.units * parcels;
  }
  return units;
}

function stockFaults(question: MixQuestion, mix: CostedMix): MixFault[] {
  const faults: MixFault[] = [];
  let share = 0;
  for (const { id, onHand, keep } of question.supplies) {
    const there = onHand + boughtOf(question, mix, id);
    const left = there - usedOf(question, mix, id);
    const slack = TINY * Math.max(1, there);
    if (left < -slack) faults.push({ kind: "stock", at: id, by: -left });
    const told = mix.stock.find(({ supplyId }) => supplyId === id);
    if (told === undefined || Math.abs(told.left - left) > slack)
      faults.push({ kind: "stock", at: `${id} told`, by: left });
    const short = mix.shortfalls.find(({ supplyId }) => supplyId === id)?.units ?? 0;
    const by = Math.max(0, keep - left) - short;
    if (Math.abs(by) > slack + TINY * keep) faults.push({ kind: "undone", at: id, by });
    if (keep > 0) share += short / keep;
  }
  if (differ(share, mix.lack.share)) faults.push({ kind: "undone", at: "share", by: mix.lack.share - share });
  const open = mix.unpacked.reduce((sum, { parcels }) => sum + parcels, 0);
  if (differ(open, mix.lack.parcels))
    faults.push({ kind: "undone", at: "parcels", by: mix.lack.parcels - open });
  return faults;
}

function costFaults(question: MixQuestion, mix: CostedMix): MixFault[] {
  let gross = 0;
  for (const order of mix.orders) gross += order.goodsMinor + order.deliveryMinor;
  for (const { id, ways } of question.types) {
    for (const { typeId, style, parcels } of mix.split) {
      const way = ways.find((each) => each.style === style);
      if (typeId === id && way !== undefined) gross += parcels * (way.sendMinor + way.otherMinor);
    }
  }
  const left = worthLeft(question, mix);
  const { grossMinor, leftMinor, totalMinor } = mix.costs;
  const faults: MixFault[] = [];
  if (differ(gross, grossMinor)) faults.push({ kind: "costs", at: "gross", by: grossMinor - gross });
  if (differ(left, leftMinor)) faults.push({ kind: "costs", at: "left over", by: leftMinor - left });
  const by = totalMinor - (gross - left);
  if (Math.abs(by) > ROUNDING * Math.max(1, gross, left)) faults.push({ kind: "costs", at: "total", by });
  return faults;
}

/** Reckoned anew, not by the costing's own code. */
function worthLeft(question: MixQuestion, mix: CostedMix): number {
  let left = 0;
  for (const { id, leftMinor, worthUpTo, onHand } of question.supplies) {
    const units = onHand + boughtOf(question, mix, id) - usedOf(question, mix, id);
    if (units > 0) left += Math.min(units, worthUpTo) * leftMinor;
  }
  return left;
}

const differ = (a: number, b: number): boolean => !(Math.abs(a - b) <= ROUNDING * Math.max(1, Math.abs(a)));
