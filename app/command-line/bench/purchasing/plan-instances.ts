import type { PlanOffer, PlanPriceStep } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSubstitute } from "#lib/purchasing/plan/plan-substitute";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import { type Dice, dice } from "./dice";

/** How large an invented question is. */
export type InstanceSize = { readonly supplies: number; readonly suppliers: number; readonly weeks: number };

const PACKS = [10, 20, 25, 50, 100, 250, 500];

/**
 * An invented question with all that a plan can hold: price steps of both kinds, least orders, delivery charges
 * and thresholds, cash and room, stand-ins, packs of 10 to 500, lead times of 1 to 3 weeks.
 *
 * @param seed the same seed gives the same question
 * @param size how many of each
 * @returns the question, aim "cheapest"
 */
export function planInstance(seed: number, size: InstanceSize): PlanQuestion {
  const chance = dice(seed);
  const suppliers = Array.from({ length: size.suppliers }, (_, index) => supplier(chance, index, size.weeks));
  const drawn = Array.from({ length: size.supplies }, (_, index) => drawnSupply(chance, index, size.weeks));
  const offers = drawn.flatMap((each) => offersOf(chance, each, suppliers));
  const supplies = drawn.map(({ supply }) => supply);
  const weekly = drawn.reduce((sum, { perWeek, unitMinor }) => sum + perWeek * unitMinor, 0);
  const room = drawn.reduce((sum, { perWeek, supply }) => sum + supply.litres * perWeek, 0);
  return {
    weeks: size.weeks,
    supplies,
    suppliers,
    offers,
    substitutes: substitutes(supplies),
    limits: {
      cash: [
        { throughWeek: 0, minor: Math.round(weekly * 5) },
        { throughWeek: Math.floor(size.weeks / 2), minor: Math.round(weekly * (size.weeks / 2 + 6)) },
      ],
      litres: Math.round(room * 9),
    },
    aim: { kind: "cheapest" },
  };
}

type Drawn = {
  readonly supply: PlanSupply;
  readonly perWeek: number;
  readonly unitMinor: number;
  readonly pack: number;
};

function supplier(chance: Dice, index: number, weeks: number): PlanSupplier {
  const isFortnightly = chance.chance(0.2);
  return {
    id: `supplier-${index}`,
    deliveryMinor: chance.whole(4, 15) * 100,
    freeFromMinor: chance.chance(0.6) ? chance.whole(50, 150) * 100 : null,
    leastOrderMinor: chance.chance(0.6) ? chance.whole(15, 40) * 100 : null,
    orderWeeks: Array.from({ length: weeks }, (_, week) => !isFortnightly || week % 2 === 0),
    handlingMinor: chance.whole(100, 400),
  };
}

function drawnSupply(chance: Dice, index: number, weeks: number): Drawn {
  const pack = chance.pick(PACKS);
  // A pack lasts two to ten weeks; what a pack costs is nearly the same for small and large units.
  const perWeek = pack / chance.between(2, 10);
  const unitMinor = chance.between(500, 3500) / pack;
  const use = Array.from({ length: weeks }, () => Math.round(perWeek * chance.between(0.5, 1.6) * 10) / 10);
  const safety = Math.round(perWeek * chance.between(0.5, 1.5));
  const isOnOrder = chance.chance(0.15);
  const arrives = chance.whole(0, 2);
  const supply: PlanSupply = {
    id: `supply-${index}`,
    stock: Math.round(perWeek * chance.between(1, 6)),
    arrivals: use.map((_, week) => (isOnOrder && week === arrives ? pack : 0)),
    use,
    wanted: use.map(() => safety),
    most: use.map(() => Math.round(perWeek * chance.between(16, 17) + pack)),
    endValueMinor: Math.round(unitMinor * 70) / 100,
    shortMinor: Math.round(unitMinor * 300) / 100,
    holdingMinor: Math.round(unitMinor * 0.5 * 1000) / 100_000,
    litres: chance.between(10, 60) / pack,
  };
  return { supply, perWeek, unitMinor, pack };
}

function offersOf(chance: Dice, drawn: Drawn, suppliers: readonly PlanSupplier[]): PlanOffer[] {
  const first = chance.whole(0, suppliers.length - 1);
  const sellers = suppliers.map((_, index) => (first + 2 * index) % suppliers.length);
  const count = chance.whole(2, 3);
  return [...new Set(sellers)].slice(0, count).map((seller, index): PlanOffer => {
    const near = PACKS[Math.max(0, PACKS.indexOf(drawn.pack) + chance.whole(-1, 0))] ?? drawn.pack;
    const unitsPerPack = index === 0 ? drawn.pack : near;
    const price = Math.round(drawn.unitMinor * unitsPerPack * chance.between(0.9, 1.2));
    return {
      id: `offer-${drawn.supply.id}-${index}`,
      supplyId: drawn.supply.id,
      supplierId: `supplier-${seller}`,
      unitsPerPack,
      steps: steps(chance, price),
      kind: chance.chance(0.6) ? "all-units" : "incremental",
      leadWeeks: 1 + (seller % 3),
      mostPacks: chance.chance(0.2) ? chance.whole(4, 12) : null,
    };
  });
}

function steps(chance: Dice, price: number): PlanPriceStep[] {
  const first = { fromPacks: 1, priceMinor: price };
  if (chance.chance(0.4)) return [first];
  const second = {
    fromPacks: chance.whole(2, 5),
    priceMinor: Math.round(price * chance.between(0.85, 0.96)),
  };
  if (chance.chance(0.6)) return [first, second];
  const third = {
    fromPacks: second.fromPacks + chance.whole(2, 6),
    priceMinor: Math.round(second.priceMinor * chance.between(0.88, 0.97)),
  };
  return [first, second, third];
}

/** Every tenth supply can be stood in for by the one after it: two layers of that for one of this. */
function substitutes(supplies: readonly PlanSupply[]): PlanSubstitute[] {
  return supplies.flatMap((supply, index) => {
    const next = supplies[index + 1];
    if (next === undefined || index % 10 !== 0) return [];
    const ratio = (2 * Math.max(1, ...next.use)) / Math.max(1, ...supply.use);
    return [{ fromSupplyId: next.id, toSupplyId: supply.id, ratio }];
  });
}
