import { expect } from "vitest";
import { economicOrderQuantity, lotCost } from "#lib/replenishment/order-quantity/economic-order-quantity";
import {
  type JointPlan,
  type JointTerms,
  jointReplenishment,
  ruleOfThumbReplenishment,
} from "#lib/replenishment/order-quantity/joint-replenishment";
import { WEEKS_A_YEAR } from "#lib/replenishment/order-quantity/order-costs";
import { orderPacks } from "#lib/replenishment/order-quantity/order-packs";
import { plannedBackorders } from "#lib/replenishment/order-quantity/planned-backorders";
import { costRatio, powerOfTwo } from "#lib/replenishment/order-quantity/power-of-two";
import { powerOfTwoReplenishment } from "#lib/replenishment/order-quantity/power-of-two-replenishment";
import { priceBreakLot } from "#lib/replenishment/order-quantity/price-break-lot";
import type { PriceSteps } from "#lib/replenishment/order-quantity/price-steps";
import { wholePacks } from "#lib/replenishment/order-quantity/whole-packs";
import { checkInventoryCases, type GivenCase } from "./inventory-cases";

const lotTerms = ({ number }: GivenCase) => ({
  orderCost: number("K"),
  holdingCost: number("h"),
  yearlyUse: number("D"),
});

function plainLot(given: GivenCase): number {
  const terms = lotTerms(given);
  const lot = economicOrderQuantity(terms);
  given.meets("Q", lot);
  return lotCost(terms, lot);
}

function priceBreaks(given: GivenCase, pricing: PriceSteps["pricing"]): void {
  const prices = given.numbers("unitPrices");
  const found = priceBreakLot({
    orderCost: given.number("K"),
    holdingShare: given.number("holdingRate"),
    yearlyUse: given.number("D"),
    prices: {
      pricing,
      steps: given.numbers("breakpoints").map((from, step) => ({ from, price: prices[step] ?? Number.NaN })),
    },
  });
  given.meets("Q", found.lot);
  given.equals("tierIndex", found.step);
  given.meets("annualCostInclPurchase", found.cost);
}

function packMultiple(given: GivenCase): void {
  const terms = lotTerms(given);
  const pack = given.number("pack");
  const lot = pack * wholePacks(economicOrderQuantity(terms) / pack);
  given.equals("Q", lot);
  given.meets("cost", lotCost(terms, lot));
}

function jointTerms({ number, numbers }: GivenCase): JointTerms {
  const [holding, use] = [numbers("holding"), numbers("demand")];
  return {
    orderCost: number("majorSetup"),
    items: numbers("minorSetups").map((lineCost, item) => ({
      lineCost,
      holdingCost: holding[item] ?? Number.NaN,
      yearlyUse: use[item] ?? Number.NaN,
    })),
  };
}

checkInventoryCases("order quantities", {
  eoq: (given) => given.meets("cost", plainLot(given)),
  "eoq-cost-at-Q": (given) => given.meets("cost", lotCost(lotTerms(given), given.number("Q"))),
  "eoq-with-purchase-and-rop": (given) => {
    given.meets("costInclPurchase", plainLot(given) + given.number("unitCost") * given.number("D"));
    given.meets("reorderPoint", given.number("D") * given.number("leadTimeYears"));
  },
  "eoq-planned-backorders": (given) => {
    const found = plannedBackorders(lotTerms(given), given.number("p"));
    given.meets("Q", found.lot);
    given.meets("stockoutFraction", found.shortShare);
    given.meets("cost", found.cost);
  },
  "eoq-with-rop-working-days": (given) => {
    const yearlyUse = given.number("D");
    given.meets("cost", plainLot(given));
    given.meets("ordersPerYear", yearlyUse / economicOrderQuantity(lotTerms(given)));
    given.meets("reorderPoint", (yearlyUse / given.number("workingDays")) * given.number("leadTimeDays"));
  },
  "eoq-sensitivity": (given) => {
    const ratio = given.number("ratioQtoOptimal");
    given.meets("costRatio", costRatio(ratio));
    const terms = { orderCost: 7, holdingCost: 3, yearlyUse: 11 };
    const lot = economicOrderQuantity(terms);
    expect(costRatio(ratio)).toBeCloseTo(lotCost(terms, ratio * lot) / lotCost(terms, lot), 12);
  },
  "quantity-discount-all-units": (given) => priceBreaks(given, "all-units"),
  "quantity-discount-incremental": (given) => priceBreaks(given, "incremental"),
  "eoq-pack-multiple": packMultiple,
  "eoq-pack-rounding-trap": packMultiple,
  "eoq-pack-tiers-moq": (given) => {
    const pack = given.number("pack");
    const tiers = given.input["tiers"] as readonly (readonly [number, number])[];
    const found = orderPacks({
      packAmount: pack,
      prices: {
        pricing: "all-units",
        steps: tiers.map(([from, price]) => ({ from: from / pack, price: price * pack })),
      },
      leastPacks: given.number("minOrderUnits") / pack,
      leastValue: null,
      mostPacks: null,
      delivery: { charge: 0, freeFrom: null },
      orderCost: given.number("K"),
      holdingShare: given.number("holdingRate"),
      usePerWeek: given.number("D") / WEEKS_A_YEAR,
      stockOnArrival: 0,
      cash: null,
      room: null,
      shelfLifeDays: null,
      longestCoverWeeks: null,
      daysUntilEnd: null,
    });
    if (found.kind !== "order") throw new RangeError(`expected an order, got ${found.kind}`);
    given.equals("Q", found.packs * pack);
    given.meets("unitPrice", found.costs.goods / (found.packs * pack));
    given.meets("annualCostInclPurchase", found.costs.yearly.total);
  },
  "power-of-two": (given) => {
    const weeks = given.number("weeksPerYear") / given.number("basePeriodWeeks");
    const best = (economicOrderQuantity(lotTerms(given)) / given.number("D")) * weeks;
    given.meets("optimalIntervalWeeks", best);
    given.equals("powerOfTwoWeeks", powerOfTwo(best));
    given.meets("costRatio", costRatio(powerOfTwo(best) / best));
  },
  "power-of-two-worst-case": (given) => {
    const ratios = Array.from({ length: 20_001 }, (_, step) => {
      const interval = 8 * Math.SQRT2 ** (step / 10_000 - 1);
      return costRatio(powerOfTwo(interval) / interval);
    });
    given.meets("bound", Math.max(...ratios));
  },
  "joint-replenishment": (given) => {
    const terms = jointTerms(given);
    const figures = ({ multiples, cycle, cost }: JointPlan) => ({ multiples, baseCycle: cycle, cost });
    const thumb = ruleOfThumbReplenishment(terms);
    given.meets("heuristic", {
      ...figures(thumb),
      quantities: terms.items.map(
        ({ yearlyUse }, item) => yearlyUse * (thumb.multiples[item] ?? Number.NaN) * thumb.cycle,
      ),
    });
    given.meets("optimum", figures(jointReplenishment(terms)));
    const alone = terms.items.reduce((sum, { lineCost, holdingCost, yearlyUse }) => {
      const own = { orderCost: terms.orderCost + lineCost, holdingCost, yearlyUse };
      return sum + lotCost(own, economicOrderQuantity(own));
    }, 0);
    given.meets("independentOrderingCost", alone);
    const expected = given.expected["optimum"] as { multiples: number[] };
    expect(jointReplenishment(terms).multiples).toEqual(expected.multiples);
  },
  "joint-replenishment-power-of-two": (given) =>
    given.meets("cost", powerOfTwoReplenishment(jointTerms(given), 1 / 52).cost),
});
