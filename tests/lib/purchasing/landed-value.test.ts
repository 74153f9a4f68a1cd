import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Invoice, landedValues } from "#lib/purchasing/landed-value";

const invoice = (changes: Partial<Invoice>): Invoice => ({
  extrasMinor: 0,
  shareRule: "price",
  rate: { numerator: 1n, denominator: 1n },
  lines: [],
  ...changes,
});
const minor = (values: readonly (bigint | null)[]) =>
  values.map((value) => (value === null ? null : Number(value) / 10_000));

describe("landed value", () => {
  const lines = [
    { packs: 3, priceMinor: 1_000 },
    { packs: 1, priceMinor: 1_000 },
  ];

  it("shares delivery and tax by what the lines cost, or equally by pack", () => {
    // By hand: 800 over 3000 and 1000 is 600 and 200; over 3 packs and 1 pack the same; by price it differs:
    expect(minor(landedValues(invoice({ extrasMinor: 800, lines })))).toEqual([3_600, 1_200]);
    const dear = [
      { packs: 3, priceMinor: 100 },
      { packs: 1, priceMinor: 2_700 },
    ];
    expect(minor(landedValues(invoice({ extrasMinor: 800, lines: dear })))).toEqual([380, 3_420]);
    const byPack = invoice({ extrasMinor: 800, shareRule: "packs", lines: dear });
    expect(minor(landedValues(byPack))).toEqual([900, 2_900]);
  });

  it("reckons in the shop's currency by the receipt's rate", () => {
    const [value] = landedValues(
      invoice({
        rate: { numerator: 1_083_600n, denominator: 1_000_000n },
        lines: [{ packs: 2, priceMinor: 950 }],
      }),
    );
    expect(value).toBe(20_588_400n); // 1900 × 1.0836 = 2058.84 minor units
  });

  it("gives a line without a price no value and no share, whatever the rule", () => {
    const some = [
      { packs: 9, priceMinor: null },
      { packs: 1, priceMinor: 500 },
    ];
    for (const shareRule of ["price", "packs"] as const) {
      expect(minor(landedValues(invoice({ extrasMinor: 70, shareRule, lines: some })))).toEqual([null, 570]);
    }
    expect(landedValues(invoice({ extrasMinor: 70, lines: [{ packs: 1, priceMinor: null }] }))).toEqual([
      null,
    ]);
  });

  it("loses no cent: the lines sum to goods, delivery and tax", () => {
    const line = fc.record({ packs: fc.integer({ min: 1, max: 40 }), priceMinor: fc.nat(99_999) });
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 8 }),
        fc.nat(50_000),
        fc.constantFrom("price" as const, "packs" as const),
        (some, extrasMinor, shareRule) => {
          const values = landedValues(invoice({ extrasMinor, shareRule, lines: some }));
          const goods = some.reduce((sum, each) => sum + each.packs * each.priceMinor, 0);
          const landed = values.reduce<bigint>((all, value) => all + (value ?? 0n), 0n);
          expect(landed).toBe(BigInt(goods + extrasMinor) * 10_000n);
        },
      ),
    );
  });
});
