import { describe, expect, it } from "vitest";
import { priceFaults } from "#lib/postage/price-faults";
import type { ZonePrices } from "#lib/postage/rate-card";
import { minorUnits } from "#lib/units/money";

const zones = ["near", "far"];
const told = (prices: ZonePrices) =>
  priceFaults("up to 1 kg", zones, prices).map(({ severity, message }) => `${severity} ${message}`);

describe("faults of the prices of a row", () => {
  it("are none where each zone has one, zero included", () => {
    expect(told([0, 500].map(minorUnits))).toEqual([]);
  });

  it("name the zone whose price is missing or below zero", () => {
    expect(told([minorUnits(-1)])).toEqual([
      "error up to 1 kg, zone near: a price must be zero or more, and whole in the smallest coin. Type what the list says.",
      "error up to 1 kg, zone far: the price is missing. Type it, or take the zone off this card.",
    ]);
  });

  it("are a note where the carrier gives none", () => {
    expect(told([minorUnits(500), null])).toEqual([
      "note up to 1 kg, zone far: there is no price, so such a parcel is not sent there. Type it if the list has one.",
    ]);
  });

  it("tell more prices than zones", () => {
    expect(told([1, 2, 3].map(minorUnits))).toEqual([
      "error up to 1 kg: there are 3 prices for 2 zones. Add the missing zone or take a price away.",
    ]);
  });
});
