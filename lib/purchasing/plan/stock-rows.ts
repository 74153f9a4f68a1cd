import type { ModelTerm } from "#lib/optimisation/linear-model";
import {
  type ModelParts,
  type ModelSupply,
  packTerms,
  standInColumn,
  stockColumn,
} from "#lib/purchasing/plan/model-columns";
import { mostStandIn } from "#lib/purchasing/plan/supply-reach";

const INFINITE = Number.POSITIVE_INFINITY;

/**
 * Columns and rows of the stock: what is on hand, owed and missing at the end of each week, and what stands in
 * for what. Stock is counted in the supply's own scale; what is owed is a column only where it can happen.
 *
 * @param parts the draft is added to
 */
export function stockRows(parts: ModelParts): void {
  standInColumns(parts);
  for (const supply of parts.supplies) {
    for (let week = 0; week < parts.question.weeks; week++) writeWeek(parts, supply, week);
  }
}

function standInColumns({ draft, question, supplies }: ModelParts): void {
  question.substitutes.forEach(({ toSupplyId }, index) => {
    const to = supplies.find(({ supply }) => supply.id === toSupplyId);
    if (to === undefined) return;
    for (let week = 0; week < question.weeks; week++) {
      const upper = mostStandIn(to.supply, week) / to.scale;
      draft.column({ name: standInColumn(index, week), kind: "real", lower: 0, upper, cost: 0 });
    }
  });
  // Two that stand in for the same supply share its need.
  for (const of of supplies) {
    for (let week = 0; week < question.weeks; week++) {
      const terms = borrowingTerms({ question }, of, week);
      if (terms.length < 2) continue;
      draft.row("share", Number.NEGATIVE_INFINITY, terms, mostStandIn(of.supply, week) / of.scale);
    }
  }
}

function writeWeek(parts: ModelParts, of: ModelSupply, week: number): void {
  const { draft, question } = parts;
  const { supply, scale, index } = of;
  const cost = weekCosts(of, week, question.weeks);
  const hand = stockColumn("hand", index, week);
  draft.column({ name: hand, kind: "real", lower: 0, upper: INFINITE, cost: cost.hand });
  const owed = mostOwed(of, week);
  const wanted = supply.wanted[week] ?? 0;
  if (owed > 0) {
    const name = stockColumn("owed", index, week);
    const most = parts.goal.kind === "relaxation" ? Math.min(owed, unavoidable(of, week)) : owed;
    draft.column({ name, kind: "real", lower: 0, upper: most / scale, cost: cost.owed });
  }
  if (wanted > 0) {
    const name = stockColumn("missing", index, week);
    const isKept = parts.goal.kind === "relaxation" && question.keepsWanted === true;
    const most = isKept ? Math.min(wanted + owed, unavoidable(of, week, wanted)) : wanted + owed;
    draft.column({ name, kind: "real", lower: 0, upper: most / scale, cost: cost.missing });
    draft.row("wanted", wanted / scale, [...endTerms(of, week), [1, name]], INFINITE);
  }
  const use = supply.use[week] ?? 0;
  const booked = (supply.arrivals[week] ?? 0) + (week === 0 ? supply.stock : 0);
  const end = endTerms(of, week).map(([factor, name]): ModelTerm => [-factor, name]);
  draft.row(
    "stock",
    (use - booked) / scale,
    [...enteringTerms(of, week), ...inflowTerms(of, week), ...standInTerms(parts, of, week), ...end],
    (use - booked) / scale,
  );
  lendingRow(parts, of, week);
}

/** What a week's stock columns cost, each in the supply's scale: where none is wanted, what is owed is missing. */
function weekCosts({ supply, scale }: ModelSupply, week: number, weeks: number) {
  const value = week === weeks - 1 ? supply.endValueMinor * scale : 0;
  const short = supply.shortMinor * scale;
  const isWanted = (supply.wanted[week] ?? 0) > 0;
  return { hand: supply.holdingMinor * scale - value, owed: value + (isWanted ? 0 : short), missing: short };
}

/**
 * What a supply's stock costs in all, as terms.
 *
 * @param of the supply
 * @param weeks number of weeks
 * @returns terms in minor units
 */
export function stockCosts(of: ModelSupply, weeks: number): ModelTerm[] {
  return Array.from({ length: weeks }, (_, week): ModelTerm[] => {
    const { hand, owed, missing } = weekCosts(of, week, weeks);
    const isWanted = (of.supply.wanted[week] ?? 0) > 0;
    return [
      [hand, stockColumn("hand", of.index, week)],
      ...(mostOwed(of, week) > 0 ? [[owed, stockColumn("owed", of.index, week)] as const] : []),
      ...(isWanted ? [[missing, stockColumn("missing", of.index, week)] as const] : []),
    ];
  })
    .flat()
    .filter(([factor]) => factor !== 0);
}

/** Only what is left after the supply's own need may stand in for another. */
function lendingRow({ draft, question, supplies }: ModelParts, of: ModelSupply, week: number): void {
  const owed = mostOwed(of, week);
  const lent = lendingTerms({ question, supplies }, of, week);
  if (lent.length === 0 || owed === 0) return;
  const lends = stockColumn("lends", of.index, week);
  const most = question.substitutes
    .filter(({ fromSupplyId }) => fromSupplyId === of.supply.id)
    .map(({ toSupplyId, ratio }) => {
      const to = supplies.find(({ supply }) => supply.id === toSupplyId);
      return to === undefined ? 0 : (mostStandIn(to.supply, week) * ratio) / of.scale;
    })
    .reduce((sum, each) => sum + each, 0);
  draft.column({ name: lends, kind: "whole", lower: 0, upper: 1, cost: 0 });
  draft.row("lend", 0, [[most, lends], ...lent], INFINITE);
  draft.row(
    "ownfirst",
    Number.NEGATIVE_INFINITY,
    [
      [1, stockColumn("owed", of.index, week)],
      [owed / of.scale, lends],
    ],
    owed / of.scale,
  );
}

/** Most use units that can be owed at the end of a week, 0 where none can. */
export function mostOwed({ reach }: ModelSupply, week: number): number {
  return Math.max(0, (reach.lent[week] ?? 0) - (reach.end[week] ?? 0));
}

/**
 * What is owed at the end of a week however much is ordered: before the first arrival, or beyond the most packs.
 *
 * @param of the supply with its slots
 * @param week number of the week, from 0
 * @param level stock that counts as enough, 0 where only what is owed counts
 * @returns use units, 0 where orders can meet the need
 */
export function unavoidable(
  { reach, slots }: Pick<ModelSupply, "reach" | "slots">,
  week: number,
  level = 0,
): number {
  const inflow = slots
    .filter(({ arrival }) => arrival <= week)
    .reduce((sum, { offer }) => sum + (offer.mostPacks ?? Number.POSITIVE_INFINITY) * offer.unitsPerPack, 0);
  return Math.max(0, level - (reach.end[week] ?? 0) - inflow);
}

/** Stock at the end of a week: on hand less owed. */
export function endTerms(of: ModelSupply, week: number): ModelTerm[] {
  const hand: ModelTerm = [1, stockColumn("hand", of.index, week)];
  return mostOwed(of, week) > 0 ? [hand, [-1, stockColumn("owed", of.index, week)]] : [hand];
}

/** Stock with which a week begins, without what the supply had at the very start. */
export const enteringTerms = (of: ModelSupply, week: number): ModelTerm[] =>
  week === 0 ? [] : endTerms(of, week - 1);

/** What orders bring in a week. */
export function inflowTerms(of: ModelSupply, week: number): ModelTerm[] {
  return of.slots
    .filter(({ arrival }) => arrival === week)
    .flatMap((slot) => packTerms(slot, slot.offer.unitsPerPack / of.scale));
}

/** What other supplies do for this one in a week, less what it does for others. */
function standInTerms(parts: ModelParts, of: ModelSupply, week: number): ModelTerm[] {
  return [...borrowingTerms(parts, of, week), ...lendingTerms(parts, of, week)];
}

/** What other supplies do for this one in a week. */
export function borrowingTerms(
  { question }: Pick<ModelParts, "question">,
  of: ModelSupply,
  week: number,
): ModelTerm[] {
  return question.substitutes.flatMap(({ toSupplyId }, index): ModelTerm[] =>
    toSupplyId === of.supply.id ? [[1, standInColumn(index, week)]] : [],
  );
}

function lendingTerms(
  { question, supplies }: Pick<ModelParts, "question" | "supplies">,
  of: ModelSupply,
  week: number,
): ModelTerm[] {
  return question.substitutes.flatMap(({ fromSupplyId, toSupplyId, ratio }, index): ModelTerm[] => {
    const to = supplies.find(({ supply }) => supply.id === toSupplyId);
    if (fromSupplyId !== of.supply.id || to === undefined) return [];
    return [[(-ratio * to.scale) / of.scale, standInColumn(index, week)]];
  });
}
