import { describe, expect, it } from "vitest";
import { zonePrices } from "#lib/postage/zone-prices";

const zones = ["Near", "Far"];
const read = (cells: readonly string[], blanks: "noPrice" | "refused" = "refused") =>
  zonePrices(cells, zones, { minorDigits: 2, blanks });

describe("prices of a row", () => {
  it("are in minor units; a dash of any length is no price", () => {
    expect(read(["4.60", "-"])).toEqual({ prices: [460, null] });
    expect(read(["–", "—"])).toEqual({ prices: [null, null] });
  });

  it("that are missing are refused, or none, as is asked", () => {
    expect(read(["4.60"])).toEqual({
      problem: "the price for Far is missing. Type it, or a dash where the carrier gives none.",
    });
    expect(read(["4.60"], "noPrice")).toEqual({ prices: [460, null] });
  });

  it("that can't be read are named", () => {
    expect(read(["dear", "1"])).toMatchObject({
      problem: expect.stringContaining("“dear” for Near is no price."),
    });
  });
});
