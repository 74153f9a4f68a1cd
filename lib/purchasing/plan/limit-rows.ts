import type { ModelTerm } from "#lib/optimisation/linear-model";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import {
  freeColumn,
  goalColumn,
  goodsColumn,
  type ModelParts,
  orderColumn,
  relaxationColumn,
  slotsByOrder,
  stockColumn,
} from "#lib/purchasing/plan/model-columns";
import { enteringTerms, inflowTerms, mostOwed } from "#lib/purchasing/plan/stock-rows";

const INFINITE = Number.POSITIVE_INFINITY;

/**
 * Rows of the limits: most stock of each supply, room, cash.
 *
 * @param parts the draft is added to
 */
export function limitRows(parts: ModelParts): void {
  mostStockRows(parts);
  roomRows(parts);
  cashRows(parts);
}

function mostStockRows({ draft, question, supplies, goal }: ModelParts): void {
  for (const of of supplies) {
    const isRelaxed = goal.kind === "relaxation" && of.slots.length > 0;
    const limit = Math.min(...of.supply.most);
    if (isRelaxed && limit < INFINITE) draft.column(relaxationColumn("most", of.index, limit));
    const relaxed: ModelTerm[] =
      isRelaxed && limit < INFINITE ? [[-1 / of.scale, goalColumn("most", of.index)]] : [];
    for (let week = 0; week < question.weeks; week++) {
      const allowed = of.reach.allowed[week] ?? INFINITE;
      const terms = [...enteringTerms(of, week), ...inflowTerms(of, week)];
      if (allowed === INFINITE || of.slots.every(({ arrival }) => arrival > week)) continue;
      draft.row(
        "most",
        Number.NEGATIVE_INFINITY,
        [...terms, ...relaxed],
        (allowed - arrived(of.supply, week)) / of.scale,
      );
    }
  }
}

function roomRows(parts: ModelParts): void {
  const { draft, question, goal } = parts;
  const room = question.limits.litres ?? INFINITE;
  if (room === INFINITE && goal.kind !== "room") return;
  if (goal.kind === "room") {
    draft.column({ name: goalColumn("peak"), kind: "real", lower: 0, upper: room, cost: 1 });
  }
  if (goal.kind === "relaxation") draft.column(relaxationColumn("room", 0, room));
  for (let week = 0; week < question.weeks; week++) {
    const { terms, there } = litresThere(parts, week);
    const most = goal.kind === "room" ? 0 : room;
    if (goal.kind === "room") terms.push([-1, goalColumn("peak")]);
    if (goal.kind === "relaxation") terms.push([-1, goalColumn("room")]);
    if (terms.length > 0) draft.row("room", Number.NEGATIVE_INFINITY, terms, most - there);
  }
}

/** Litres right after the arrivals of a week: what is known, and terms for the rest. */
function litresThere({ draft, supplies }: ModelParts, week: number): { terms: ModelTerm[]; there: number } {
  const terms: ModelTerm[] = [];
  let there = 0;
  for (const of of supplies) {
    const { litres } = of.supply;
    if (litres === 0) continue;
    const after = [...enteringTerms(of, week), ...inflowTerms(of, week)];
    const known = arrived(of.supply, week);
    const canOwe = week === 0 ? of.supply.stock < 0 : mostOwed(of, week - 1) > 0;
    if (canOwe) {
      // What is owed takes no room: the column is what is there, or nothing.
      const peak = stockColumn("peak", of.index, week);
      draft.column({ name: peak, kind: "real", lower: 0, upper: INFINITE, cost: 0 });
      const less = after.map(([factor, name]): ModelTerm => [-factor, name]);
      draft.row("peak", known / of.scale, [[1, peak], ...less], INFINITE);
      terms.push([litres * of.scale, peak]);
    } else {
      there += litres * known;
      terms.push(...after.map(([factor, name]): ModelTerm => [factor * litres * of.scale, name]));
    }
  }
  return { terms, there };
}

const arrived = (supply: ModelParts["supplies"][number]["supply"], week: number): number =>
  (supply.arrivals[week] ?? 0) + (week === 0 ? supply.stock : 0);

function cashRows({ draft, question, slots, goal }: ModelParts): void {
  const cash = cashLimits(question);
  const orders = slotsByOrder(slots);
  for (const [index, { throughWeek, minor }] of cash.entries()) {
    const terms = orders.flatMap(([slot]): ModelTerm[] => {
      if (slot === undefined || slot.week > throughWeek) return [];
      const { supplier, supplierIndex, week } = slot;
      const spent: ModelTerm[] = [
        [1, goodsColumn(supplierIndex, week)],
        [supplier.deliveryMinor, orderColumn(supplierIndex, week)],
      ];
      const isFreeSometimes = supplier.freeFromMinor !== null && supplier.deliveryMinor > 0;
      return isFreeSometimes ? [...spent, [-supplier.deliveryMinor, freeColumn(supplierIndex, week)]] : spent;
    });
    if (terms.length === 0) continue;
    if (goal.kind === "relaxation") {
      draft.column(relaxationColumn("cash", index, minor));
      terms.push([-1, goalColumn("cash", index)]);
    }
    draft.row("cash", Number.NEGATIVE_INFINITY, terms, minor);
  }
}
