import type { MixOffer, MixQuestion, MixSupply, MixType } from "#lib/cushioning/purchase/mix-question";
import type { LeftOutOffer } from "#lib/purchasing/plan/checked-question";

/** A supply of which a unit left over was said to be worth more than a bought one costs; it is reckoned with less. */
export type CappedWorth = {
  readonly supplyId: string;
  /** what was said, minor units for a use unit */
  readonly fromMinor: number;
  /** what is reckoned with: what a unit costs at the cheapest step of the cheapest offer */
  readonly toMinor: number;
  readonly offerId: string;
};

/** A question that can be planned, the offers it goes without, and the worths that were capped. */
export type CheckedMix = {
  readonly question: MixQuestion;
  readonly leftOut: readonly LeftOutOffer[];
  readonly capped: readonly CappedWorth[];
};

/**
 * Holds a question against what the mix takes for granted, leaves out offers that cannot be bought, and caps what a unit
 * left over is worth at what one costs at the cheapest, so that nothing is bought for its worth alone.
 *
 * @param question all of the mix
 * @returns the question to plan, and what was changed in it
 * @throws RangeError naming the supply, supplier, offer or type, and the value that is wrong
 */
export function checkedMix(question: MixQuestion): CheckedMix {
  const { supplies, suppliers, offers, types, limits } = question;
  for (const list of [supplies, suppliers, offers, types]) requireDistinct(list.map(({ id }) => id));
  for (const supply of supplies) checkSupply(supply);
  for (const { id, deliveryMinor, freeFromMinor, leastOrderMinor } of suppliers) {
    const minors = [deliveryMinor, freeFromMinor ?? 0, leastOrderMinor ?? 0];
    required(minors.every(isMinor), `whole amounts of money at supplier ${id}`, minors);
  }
  for (const offer of offers) checkOffer(offer);
  const known = new Set(supplies.map(({ id }) => id));
  for (const type of types) checkType(type, known);
  required(limits.cashMinor === null || isAmount(limits.cashMinor), "cash of at least 0", limits.cashMinor);
  required(limits.litres === null || isAmount(limits.litres), "room of at least 0 litres", limits.litres);
  const leftOut = leftOutOf(question);
  const gone = new Set(leftOut.map(({ offerId }) => offerId));
  const sold = offers.filter(({ id }) => !gone.has(id));
  const capped = supplies.flatMap((supply) => cappedWorth(supply, sold));
  const worth = new Map(capped.map(({ supplyId, toMinor }) => [supplyId, toMinor]));
  const reckoned = supplies.map((supply) => ({
    ...supply,
    leftMinor: worth.get(supply.id) ?? supply.leftMinor,
  }));
  return { question: { ...question, offers: sold, supplies: reckoned }, leftOut, capped };
}

function leftOutOf({ supplies, suppliers, offers }: MixQuestion): LeftOutOffer[] {
  return offers.flatMap(({ id, steps, supplierId, supplyId }): LeftOutOffer[] => {
    if (steps === null) return [{ offerId: id, why: "no-price" }];
    if (suppliers.every((each) => each.id !== supplierId)) return [{ offerId: id, why: "no-supplier" }];
    return supplies.some((each) => each.id === supplyId) ? [] : [{ offerId: id, why: "no-supply" }];
  });
}

/** Room for the rounding of a price for a unit, so that a pack never costs less than its units are worth. */
const BELOW = 1 - 1e-12;

function cappedWorth({ id, leftMinor }: MixSupply, offers: readonly MixOffer[]): CappedWorth[] {
  const prices = offers.flatMap(({ id: offerId, supplyId, steps, mostPacks, unitsPerPack }) => {
    const most = mostPacks ?? Number.POSITIVE_INFINITY;
    const reached = (steps ?? []).filter(({ fromPacks }) => fromPacks <= most);
    if (supplyId !== id || reached.length === 0) return [];
    const least = Math.min(...reached.map(({ priceMinor }) => priceMinor));
    return [{ offerId, unitMinor: (least / unitsPerPack) * BELOW }];
  });
  const [cheapest] = prices.toSorted((a, b) => a.unitMinor - b.unitMinor);
  if (cheapest === undefined || leftMinor <= cheapest.unitMinor) return [];
  return [{ supplyId: id, fromMinor: leftMinor, toMinor: cheapest.unitMinor, offerId: cheapest.offerId }];
}

function checkSupply({ id, onHand, keep, leftMinor, worthUpTo, litresPerUnit }: MixSupply): void {
  required(isAmount(onHand), `a stock of at least 0 on hand of supply ${id}`, onHand);
  required(isAmount(keep), `at least 0 to be kept of supply ${id}`, keep);
  required(isAmount(leftMinor), `a worth of at least 0 of supply ${id}`, leftMinor);
  required(worthUpTo >= 0, `at least 0 units left over that are worth something of supply ${id}`, worthUpTo);
  required(isAmount(litresPerUnit), `litres of at least 0 of supply ${id}`, litresPerUnit);
}

function checkOffer({ id, unitsPerPack, steps, mostPacks }: MixOffer): void {
  required(Number.isFinite(unitsPerPack) && unitsPerPack > 0, `a pack above 0 of offer ${id}`, unitsPerPack);
  required(mostPacks === null || isMinor(mostPacks), `whole most packs of offer ${id}`, mostPacks);
  if (steps === null) return;
  const froms = steps.map(({ fromPacks }) => fromPacks);
  const isRising = froms.every((from, index) => Number.isSafeInteger(from) && from > (froms[index - 1] ?? 0));
  required(steps.length > 0 && isRising, `price steps from ever more packs of offer ${id}`, froms);
  const prices = steps.map(({ priceMinor }) => priceMinor);
  required(prices.every(isMinor), `whole prices of at least 0 of offer ${id}`, prices);
}

function checkType({ id, parcels, ways }: MixType, known: ReadonlySet<string>): void {
  required(isAmount(parcels), `at least 0 parcels of type ${id}`, parcels);
  required(ways.length > 0, `at least one way to pack type ${id}`, "none");
  requireDistinct(ways.map(({ style }) => `${id} in ${style}`));
  for (const { style, takes, sendMinor, otherMinor } of ways) {
    const at = `type ${id} in ${style}`;
    required([sendMinor, otherMinor].every(isAmount), `costs of at least 0 of ${at}`, [
      sendMinor,
      otherMinor,
    ]);
    requireDistinct(takes.map(({ supplyId }) => `${supplyId} in ${at}`));
    for (const { supplyId, units } of takes) {
      required(known.has(supplyId), `supplies that the question has in ${at}`, supplyId);
      required(isAmount(units), `at least 0 units of ${supplyId} in ${at}`, units);
    }
  }
}

const isAmount = (value: number): boolean => Number.isFinite(value) && value >= 0;
const isMinor = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

function requireDistinct(names: readonly string[]): void {
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new RangeError(`A mix requires each once, got ${twice} twice`);
}

function required(isMet: boolean, what: string, got: unknown): void {
  if (!isMet) throw new RangeError(`A mix requires ${what}, got ${String(got)}`);
}
