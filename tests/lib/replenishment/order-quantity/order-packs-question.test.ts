import { describe, expect, it } from "vitest";
import { checkOrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";
import { orderTerms } from "./order-terms";

describe("the terms of an order", () => {
  it("may be without limits", () => {
    expect(() => checkOrderPacksQuestion(orderTerms())).not.toThrow();
  });

  it.each([
    ["a pack above 0, got 0", { packAmount: 0 }],
    ["leastPacks from 0, got -1", { leastPacks: -1 }],
    ["charge from 0, got -600", { delivery: { charge: -600, freeFrom: null } }],
    ["freeFrom from 0, got NaN", { delivery: { charge: 600, freeFrom: Number.NaN } }],
    ["usePerWeek from 0, got Infinity", { usePerWeek: Infinity }],
    ["stockOnArrival from 0, got -3", { stockOnArrival: -3 }],
    ["litresPerPack from 0, got -1", { room: { litres: 4, litresPerPack: -1 } }],
    ["daysUntilEnd from 0, got -7", { daysUntilEnd: -7 }],
  ])("name what is out of range: %s", (message, changes) => {
    expect(() => checkOrderPacksQuestion(orderTerms(changes))).toThrow(message);
  });
});
