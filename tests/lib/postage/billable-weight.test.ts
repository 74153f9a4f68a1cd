import { describe, expect, it } from "vitest";
import { type BillableQuestion, billableLines, billableWeight } from "#lib/postage/billable-weight";
import { massIn } from "#lib/postage/exact-mass";
import { ratio, ratioNumber } from "#lib/postage/ratio";
import { exact, sized, typed, weighed } from "./rate-card-fixture";

const question: BillableQuestion = {
  weight: weighed("4 kg"),
  size: sized("40 x 30 x 25 cm"),
  rule: {
    divisor: exact("5000"),
    lengthUnit: "cm",
    massUnit: "kg",
    floor: null,
    sides: { kind: "none" },
    result: { kind: "none" },
    shapeFactor: null,
    atMost: null,
    zones: null,
  },
  roundUpTo: null,
};
const billed = (change: Partial<BillableQuestion>) => {
  const { ng, from } = billableWeight({ ...question, ...change });
  return [ratioNumber(massIn(ng, "kg")), from];
};

describe("billable weight", () => {
  it("is the greater of packed weight and weight by size", () => {
    expect(billed({})).toEqual([6, "dimensional"]);
    expect(billed({ weight: weighed("6.5 kg") })).toEqual([6.4999995, "packed"]);
    expect(billed({ weight: { ng: ratio(6_000_000_000_000n), text: "6 kg" } })).toEqual([6, "packed"]);
  });

  it("is the packed weight where sizes or the rule are not there", () => {
    expect(billed({ size: null })[1]).toBe("packed");
    expect(billed({ rule: null })[1]).toBe("packed");
  });

  it("goes up to a whole multiple, but not past one that was typed and stored", () => {
    expect(billed({ size: null, roundUpTo: typed("0.5", "kg"), weight: weighed("4 kg") })[0]).toBe(4);
    expect(billed({ size: null, roundUpTo: typed("0.5", "kg"), weight: weighed("4.001 kg") })[0]).toBe(4.5);
    const ounces = billableWeight({
      ...question,
      size: null,
      weight: weighed("5 oz"),
      roundUpTo: typed("1", "oz"),
    });
    expect(ratioNumber(massIn(ounces.ng, "oz"))).toBe(5);
  });

  it("is told from the sizes as typed to the greater of the two", () => {
    const lines = billableLines({ ...question, roundUpTo: typed("1", "kg") }, "kg");
    expect(lines.map(({ label, value }) => `${label}: ${value}`)).toEqual([
      "Outside sizes: 40 x 30 x 25 cm",
      "Rounded: 40 × 30 × 25 cm",
      "Volume: 30,000 cm³",
      "Dimensional weight: 6 kg",
      "Packed weight: 4 kg",
      "Billed weight: 6 kg",
    ]);
    expect(lines.at(-1)?.note).toBe("By size, the greater of the two, up to a multiple of 1 kg.");
  });

  it("says that unknown sizes may cost more, and what does not count", () => {
    expect(billableLines({ ...question, size: null }, "kg").at(-1)).toEqual({
      label: "Billed weight",
      value: "4 kg",
      note: "By packed weight; sizes are not known, which may cost more.",
    });
    expect(billableLines({ ...question, rule: null }, "kg").at(-1)?.note).toBe(
      "By packed weight; size does not count.",
    );
  });
});
