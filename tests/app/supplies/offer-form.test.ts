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

  it("says which step contradicts the others, by the field of the breaks", () => {
    const problem = (breaks: string) => {
      const read = form.safeParse({ ...TYPED, breaks });
      return read.error?.issues.map((issue) => [issue.path, issue.message]);
    };
    expect(problem("3: 24.50, 3: 23.00")).toEqual([
      [["breaks"], "The step from 3 packs on stands twice. Write each step once, like 3: 36.00, 6: 34.00."],
    ]);
    const dearer = "is not lower than the one before it. Mend it, or leave that step out.";
    expect(problem("3: 26.00")).toEqual([[["breaks"], `The price from 3 packs on ${dearer}`]]);
    expect(problem("6: 24.50, 3: 23.00")).toEqual([[["breaks"], `The price from 6 packs on ${dearer}`]]);
  });

  it("reads for which packs a lower price counts, and the room of one pack", () => {
    expect(form.parse({ ...TYPED, breakKind: "incremental", volume: "1.9 cu ft" })).toMatchObject({
      breakKind: "incremental",
      volume: { ml: 53_802, typed: "1.9 cu ft" },
    });
    expect(form.parse(TYPED).breakKind).toBe("all-units");
    expect(form.safeParse({ ...TYPED, volume: "1.9" }).error?.issues[0]?.path).toEqual(["volume"]);
  });
});
