import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";

/** An offer that the plan does not look at, and why. */
export type LeftOutOffer = {
  readonly offerId: string;
  readonly why: "no-price" | "no-supplier" | "no-supply";
};

/** A question that can be planned, and the offers it goes without. */
export type CheckedQuestion = { readonly question: PlanQuestion; readonly leftOut: readonly LeftOutOffer[] };

/**
 * Holds a question against what the plan takes for granted, and leaves out offers that cannot be bought.
 *
 * @param question all of the plan
 * @returns the question without the offers that are left out
 * @throws RangeError naming the supply, supplier or offer, and the value that is wrong
 */
export function checkedQuestion(question: PlanQuestion): CheckedQuestion {
  if (!Number.isSafeInteger(question.weeks) || question.weeks < 1) {
    throw new RangeError(`A plan requires at least one week, got ${question.weeks}`);
  }
  const ids = [question.supplies, question.suppliers, question.offers].map((list) =>
    list.map(({ id }) => id),
  );
  for (const list of ids) {
    const twice = list.find((id, index) => list.indexOf(id) !== index);
    if (twice !== undefined) throw new RangeError(`A plan requires ids that differ, got ${twice} twice`);
  }
  for (const supply of question.supplies) checkSupply(question, supply);
  for (const supplier of question.suppliers) {
    const { id, deliveryMinor, freeFromMinor, leastOrderMinor, handlingMinor, orderWeeks } = supplier;
    const minors = [deliveryMinor, freeFromMinor ?? 0, leastOrderMinor ?? 0];
    required(minors.every(isMinor), `whole amounts of money at supplier ${id}`, minors);
    required(isAmount(handlingMinor), `a handling cost of at least 0 at supplier ${id}`, handlingMinor);
    required(
      orderWeeks.length === question.weeks,
      `an entry for each week at supplier ${id}`,
      orderWeeks.length,
    );
  }
  for (const offer of question.offers) checkOffer(offer);
  checkLimits(question);
  const suppliers = new Set(question.suppliers.map(({ id }) => id));
  const supplies = new Set(question.supplies.map(({ id }) => id));
  const leftOut = question.offers.flatMap((offer): LeftOutOffer[] => {
    if (offer.steps === null) return [{ offerId: offer.id, why: "no-price" }];
    if (!suppliers.has(offer.supplierId)) return [{ offerId: offer.id, why: "no-supplier" }];
    return supplies.has(offer.supplyId) ? [] : [{ offerId: offer.id, why: "no-supply" }];
  });
  const gone = new Set(leftOut.map(({ offerId }) => offerId));
  return { question: { ...question, offers: question.offers.filter(({ id }) => !gone.has(id)) }, leftOut };
}

function checkSupply({ weeks }: PlanQuestion, supply: PlanSupply): void {
  const { id, stock, arrivals, use, wanted, most } = supply;
  required(Number.isFinite(stock), `a known stock of supply ${id}`, stock);
  for (const [name, list] of Object.entries({ arrivals, use, wanted, most })) {
    required(list.length === weeks, `an entry for each week in ${name} of supply ${id}`, list.length);
    const isGood = name === "most" ? (value: number) => value >= 0 : isAmount;
    const wrong = list.find((value) => !isGood(value));
    if (wrong !== undefined)
      throw new RangeError(`A plan requires ${name} of at least 0 of supply ${id}, got ${wrong}`);
  }
  const costs = [supply.endValueMinor, supply.shortMinor, supply.holdingMinor, supply.litres];
  required(costs.every(isAmount), `costs and litres of at least 0 of supply ${id}`, costs);
}

function checkOffer({ id, unitsPerPack, steps, leadWeeks, mostPacks }: PlanOffer): void {
  required(Number.isFinite(unitsPerPack) && unitsPerPack > 0, `a pack above 0 of offer ${id}`, unitsPerPack);
  required(isMinor(leadWeeks), `whole lead weeks of offer ${id}`, leadWeeks);
  required(mostPacks === null || isMinor(mostPacks), `whole most packs of offer ${id}`, mostPacks);
  if (steps === null) return;
  const froms = steps.map(({ fromPacks }) => fromPacks);
  const isRising = froms.every((from, index) => Number.isSafeInteger(from) && from > (froms[index - 1] ?? 0));
  required(steps.length > 0 && isRising, `price steps from ever more packs of offer ${id}`, froms);
  const prices = steps.map(({ priceMinor }) => priceMinor);
  required(prices.every(isMinor), `whole prices of at least 0 of offer ${id}`, prices);
}

function checkLimits({ weeks, limits, aim, substitutes, supplies }: PlanQuestion): void {
  for (const { throughWeek, minor } of limits.cash) {
    const isWeek = Number.isSafeInteger(throughWeek) && throughWeek >= 0 && throughWeek < weeks;
    required(isWeek && isAmount(minor), "cash limits of at least 0 through a week of the plan", [
      throughWeek,
      minor,
    ]);
  }
  required(limits.litres === null || isAmount(limits.litres), "room of at least 0 litres", limits.litres);
  if (aim.kind === "within") required(isAmount(aim.minor), "a sum of at least 0 for this week", aim.minor);
  if (aim.kind === "least-room")
    required(isAmount(aim.extraShare), "an extra share of at least 0", aim.extraShare);
  const known = new Set(supplies.map(({ id }) => id));
  for (const { fromSupplyId, toSupplyId, ratio } of substitutes) {
    const name = `stand-in of ${fromSupplyId} for ${toSupplyId}`;
    required(known.has(fromSupplyId) && known.has(toSupplyId), `two known supplies in the ${name}`, "none");
    required(fromSupplyId !== toSupplyId, `two different supplies in the ${name}`, "one");
    required(Number.isFinite(ratio) && ratio > 0, `a ratio above 0 in the ${name}`, ratio);
  }
}

const isAmount = (value: number): boolean => Number.isFinite(value) && value >= 0;
const isMinor = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

function required(isMet: boolean, what: string, got: unknown): void {
  if (!isMet) throw new RangeError(`A plan requires ${what}, got ${String(got)}`);
}
