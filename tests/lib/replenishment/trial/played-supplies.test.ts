import { describe, expect, it } from "vitest";
import type { SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { playedSupplies } from "#lib/replenishment/trial/played-supplies";
import { comingSpan } from "#lib/replenishment/trial/trial-span";
import { amountOfUnits } from "#lib/units/amount";
import { addDays } from "#lib/units/day";
import { TODAY, trialOffer, trialShop, trialSupply } from "./trial-shop";

const coming = comingSpan(trialShop());
const past = { kind: "past", firstDay: addDays(TODAY, -7), days: 7 } as const;
const of = (supply: Partial<SupplyOutlookInput>, span: typeof coming | typeof past = coming) =>
  playedSupplies(trialShop({ supplies: [trialSupply(supply)] }), span);

describe("the supplies that a trial plays", () => {
  it("begin with their stock and what is under way, in use units", () => {
    const onOrder = [{ amount: amountOfUnits(30), expectedOn: addDays(TODAY, 4) }];
    expect(of({ onOrder }).played[0]).toMatchObject({
      startStock: 20,
      arrivals: [{ dueDay: 4, amount: 30 }],
      source: { kind: "drawn" },
    });
  });

  it.each([
    [{ onHand: null }, "not-counted"],
    [{ onHand: amountOfUnits(-1) }, "below-zero"],
    [{ offers: [] }, "no-price"],
    [{ offers: [trialOffer({ priceMinor: null })] }, "no-price"],
    [{ forecast: null, onHand: null }, "not-used"],
  ] as const)("leave out %o by reason", (changes, reason) => {
    expect(of(changes)).toEqual({ played: [], leftOut: [{ name: "Tissue", reason }] });
  });

  it("know nothing of the stock of the past, and so need no count", () => {
    const useByDay = [{ day: addDays(TODAY, -6), amount: amountOfUnits(3) }];
    expect(of({ onHand: null, useByDay }, past).played[0]).toMatchObject({
      startStock: null,
      arrivals: [],
      source: { kind: "replayed", perDay: [0, 3, 0, 0, 0, 0, 0] },
    });
  });
});
