import { expect } from "vitest";
import { cover, WEEKS_PER_MONTH } from "#lib/cartons/keeping/cover";
import { discountedRetention } from "#lib/cartons/keeping/discounted-retention";
import { keepFigure } from "#lib/cartons/keeping/keep-figure";
import { retention } from "#lib/cartons/keeping/retention";
import { nestedSizes } from "#lib/cartons/range/nested-sizes";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { checkPublishedCases, type GivenCase, readCases } from "./published-cases";

const CASES = readCases<"cases">("carton-keeping-cases.json").cases;

const termsOf = (given: GivenCase, lot: number) => ({
  yearlyUse: given.number("annualDemand"),
  unitCost: given.number("unitCost"),
  salvage: given.number("salvage"),
  holdingRate: given.number("holdingRate"),
  orderCost: given.number("orderCost"),
  lot,
});

checkPublishedCases("what to keep", CASES, [
  [
    /^ex-001$/,
    (given) => {
      const lot = economicOrderQuantity({
        orderCost: given.number("orderCost"),
        holdingCost: given.number("unitCost") * given.number("holdingRate"),
        yearlyUse: given.number("annualDemand"),
      });
      const terms = termsOf(given, lot);
      const { keep, keepYears } = retention(terms);
      given.meets("eoq", lot);
      given.meets("keep", keep);
      given.meets("dispose", given.number("onHand") - keep);
      given.meets("keepYears", keepYears);
      // In whole cartons: 2,011 stay, 1,489 go.
      const figure = keepFigure({ ...terms, onHand: given.number("onHand"), watchedDays: 365 });
      expect(figure).toMatchObject({ kind: "letGo", keep: 2011, letGo: 1489, reason: "moreThanPays" });
    },
  ],
  [
    /^ex-002$/,
    (given) => {
      const { keep, keepYears } = retention(termsOf(given, given.number("usualLot")));
      given.meets("keepYears", keepYears);
      given.meets("keep", keep);
    },
  ],
  [
    /^ex-003$/,
    (given) =>
      given.meets(
        "keepYears",
        discountedRetention({
          unitCost: given.number("unitCost"),
          salvage: given.number("salvage"),
          yearlyHolding: given.number("outOfPocketHoldingPerUnitYear"),
          discountRate: given.number("discountRate"),
        }),
      ),
  ],
  [
    /^ag-001$/,
    (given) => {
      expect(WEEKS_PER_MONTH).toBeCloseTo(given.number("weeksPerMonth"), 12);
      const found = cover({
        onHand: given.number("onHand"),
        onOrder: given.number("onOrder"),
        weeklyUse: given.number("weeklyUsage13"),
      });
      given.meets("weeks", found?.weeks ?? null);
      given.meets("months", found?.months ?? null);
    },
  ],
  [
    /^ct-002$/,
    (given) => {
      const counts = given.numbers("counts");
      const sizes = given
        .numbers("sizes")
        .map((size, at) => ({ size, count: counts[at] ?? Number.NaN, unitCost: size ** 2 }));
      const { cost, chosen } = nestedSizes(sizes, given.number("k"));
      given.meets("cost", cost);
      given.meets("chosen", chosen);
    },
  ],
]);
