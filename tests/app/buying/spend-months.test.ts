import { describe, expect, it } from "vitest";
import { changeWords, priceFinding } from "#app/buying/price-words.ts";
import { spendFinding } from "#app/buying/spend-finding.ts";
import { spendMonths } from "#app/buying/spend-months.ts";
import { day } from "#lib/units/day";

const row = (month: string, supplierName: string | null, minor: number) => ({
  month,
  supplierId: supplierName,
  supplierName,
  minor,
  receipts: 1,
  withoutPrice: 0,
});
const money = (minor: number) => `$${minor / 100}`;

describe("spending by month", () => {
  const { months, suppliers } = spendMonths([
    row("2026-03", "North", 1_000),
    row("2026-03", null, 200),
    row("2025-12", "South", 5_000),
  ]);

  it("has every month between the first and the last, the latest first, and the suppliers by sum", () => {
    expect(months.map(({ month, minor }) => [month, minor])).toEqual([
      ["2026-03", 1_200],
      ["2026-02", 0],
      ["2026-01", 0],
      ["2025-12", 5_000],
    ]);
    expect(suppliers).toEqual(["South", "North", "somebody else"]);
  });

  it("is told against the months before, the running one apart", () => {
    // (0 + 0 + 50.00) / 3
    expect(spendFinding(months, day("2026-03-11"), money)).toBe(
      "$12 spent so far in Mar 2026; $16.67 a month before it",
    );
    expect(spendFinding(months.slice(0, 1), day("2026-04-11"), money)).toBe("$12 spent in Mar 2026");
  });
});

describe("prices in words", () => {
  it("say dearer and cheaper, and nothing of half a percent", () => {
    expect([1.08, 0.9, 1.004, null].map(changeWords)).toEqual([
      "8\u00a0% dearer",
      "10\u00a0% cheaper",
      "the same",
      "–",
    ]);
  });

  it("name the supply that rose most", () => {
    const rose = (supply: string, ratioToBefore: number | null) => ({ supply, move: { ratioToBefore } });
    expect(priceFinding([rose("Tissue", null), rose("Tape", 1)])).toBe("No price rose when it was last paid");
    expect(priceFinding([rose("Tissue", 1.02), rose("Tape", 1.1)])).toBe(
      "2 supplies were dearer when they were last bought, Tape most: 10\u00a0% dearer",
    );
  });
});
