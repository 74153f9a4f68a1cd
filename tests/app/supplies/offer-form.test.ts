import { describe, expect, it } from "vitest";
import { offerForm } from "#app/supplies/[id]/offer-form.ts";

const TYPED = { supplierId: "marram", pack: "roll of 188 ft", packAmount: "188 ft", price: "26.00" };
const form = offerForm("foot", "imperial", 2);

describe("offer form", () => {
  it("reads price breaks in one line", () => {
    expect(form.parse({ ...TYPED, breaks: "3: 24.50, 6: 23" })).toMatchObject({
      price: 2600,
      breaks: [
        { fromPacks: 3, priceMinor: 2450 },
        { fromPacks: 6, priceMinor: 2300 },
      ],
    });
  });

  it("reads a price break with a decimal comma", () => {
    expect(
      form.parse({ ...TYPED, breaks: "3: 24,50; 6: 23,00" }).breaks?.map((step) => step.priceMinor),
    ).toEqual([2450, 2300]);
  });

  it.each(["3", "1: 20.00", "3: 24.50, 3: 23.00", "three: 20"])("refuses the price breaks %s", (breaks) => {
    expect(form.safeParse({ ...TYPED, breaks }).success).toBe(false);
  });

  it("needs no price", () => {
    expect(form.parse({ ...TYPED, price: undefined }).price).toBeUndefined();
  });
});
