import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";

/** A supply with nothing special: no stock, nothing wanted, a shortage that costs 100 a unit and week. */
export function plainSupply(
  id: string,
  use: readonly number[],
  changes: Partial<PlanSupply> = {},
): PlanSupply {
  const none = use.map(() => 0);
  return {
    id,
    stock: 0,
    arrivals: none,
    use,
    wanted: none,
    most: use.map(() => Number.POSITIVE_INFINITY),
    endValueMinor: 0,
    shortMinor: 100,
    holdingMinor: 1,
    litres: 1,
    ...changes,
  };
}

/** A supplier that delivers for nothing, any week. */
export function plainSupplier(id: string, weeks: number, changes: Partial<PlanSupplier> = {}): PlanSupplier {
  return {
    id,
    deliveryMinor: 0,
    freeFromMinor: null,
    leastOrderMinor: null,
    orderWeeks: Array.from({ length: weeks }, () => true),
    handlingMinor: 0,
    ...changes,
  };
}

/** An offer with one price and no lead time. */
export function plainOffer(
  supplyId: string,
  supplierId: string,
  changes: Partial<PlanOffer> = {},
): PlanOffer {
  return {
    id: `${supplyId} of ${supplierId}`,
    supplyId,
    supplierId,
    unitsPerPack: 1,
    steps: [{ fromPacks: 1, priceMinor: 100 }],
    kind: "all-units",
    leadWeeks: 0,
    mostPacks: null,
    ...changes,
  };
}

/** A question without limits. */
export function plainQuestion(
  parts: Pick<PlanQuestion, "supplies" | "suppliers" | "offers"> & Partial<PlanQuestion>,
): PlanQuestion {
  const weeks = parts.supplies[0]?.use.length ?? 1;
  return { weeks, substitutes: [], limits: { cash: [], litres: null }, aim: { kind: "cheapest" }, ...parts };
}

/** Chance from a seed: the same seed gives the same whole numbers. */
export function seeded(seed: number): (from: number, to: number) => number {
  let state = (seed * 7919 + 17) % 2_147_483_647;
  return (from, to) => {
    state = (state * 48_271) % 2_147_483_647;
    return from + (Math.floor(state / 1024) % (to - from + 1));
  };
}

/** A small question with everything in it, three weeks, at most seven places for an order. */
export function smallQuestion(seed: number): PlanQuestion {
  const draw = seeded(seed);
  const weeks = 3;
  const hasPair = seed % 3 === 0;
  const count = hasPair ? 2 : draw(2, 3);
  const supplies = Array.from({ length: count }, (_, index) => smallSupply(draw, `supply ${index}`, weeks));
  if (hasPair)
    supplies.push({ ...smallSupply(draw, "saved", weeks), stock: draw(0, 4), use: [0, draw(0, 1), 0] });
  const suppliers = ["north", "south"].map((id) =>
    plainSupplier(id, weeks, {
      deliveryMinor: draw(0, 400),
      freeFromMinor: draw(0, 1) === 0 ? null : draw(400, 1500),
      leastOrderMinor: draw(0, 2) === 0 ? draw(100, 600) : null,
      handlingMinor: draw(0, 60),
      orderWeeks: [true, draw(0, 3) > 0, true],
    }),
  );
  const offers = supplies
    .filter(({ id }) => id !== "saved")
    .flatMap(({ id }, index) => {
      const sellers = index === 0 ? ["north", "south"] : [draw(0, 1) === 0 ? "north" : "south"];
      return sellers.map((seller) => smallOffer(draw, id, seller, index === 0 ? 1 : 2));
    });
  const substitutes = hasPair ? [{ fromSupplyId: "saved", toSupplyId: "supply 0", ratio: draw(1, 2) }] : [];
  return {
    weeks,
    supplies,
    suppliers,
    offers,
    substitutes,
    limits: {
      cash: draw(0, 1) === 0 ? [] : [{ throughWeek: draw(0, 2), minor: draw(300, 2500) }],
      litres: draw(0, 1) === 0 ? null : draw(14, 40),
    },
    aim: { kind: "cheapest" },
  };
}

function smallSupply(draw: (from: number, to: number) => number, id: string, weeks: number): PlanSupply {
  const list = (from: number, to: number) => Array.from({ length: weeks }, () => draw(from, to));
  return {
    id,
    stock: draw(-1, 3),
    arrivals: [0, draw(0, 3) === 0 ? draw(1, 3) : 0, 0],
    use: list(0, 2),
    wanted: list(0, 2),
    most: draw(0, 1) === 0 ? list(4, 12) : list(40, 40),
    endValueMinor: draw(0, 60),
    shortMinor: draw(20, 300),
    holdingMinor: draw(0, 8),
    litres: draw(0, 2),
  };
}

function smallOffer(
  draw: (from: number, to: number) => number,
  supplyId: string,
  supplierId: string,
  least: number,
): PlanOffer {
  const first = draw(80, 300);
  const later = [{ fromPacks: draw(2, 3), priceMinor: Math.round((first * draw(70, 110)) / 100) }];
  return {
    id: `${supplyId} of ${supplierId}`,
    supplyId,
    supplierId,
    unitsPerPack: draw(1, 4),
    steps: [{ fromPacks: 1, priceMinor: first }, ...(draw(0, 2) > 0 ? later : [])],
    kind: draw(0, 1) === 0 ? "all-units" : "incremental",
    leadWeeks: draw(least === 1 ? 0 : 1, 1),
    mostPacks: 3,
  };
}
