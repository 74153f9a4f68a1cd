import { describe, expect, it } from "vitest";
import { checkOutcome, type SaidAndCame } from "#lib/replenishment/check-outcome";
import { amountOfUnits } from "#lib/units/amount";

const row = (supplyId: string, used: number, changes: Partial<SaidAndCame> = {}): SaidAndCame => ({
  supplyId,
  expected: amountOfUnits(100),
  used: amountOfUnits(used),
  ranOut: false,
  wasToOrder: false,
  wasOrdered: false,
  ...changes,
});

describe("how a check turned out", () => {
  it("counts use within a quarter as close, and names what took half as much again, the most first", () => {
    const outcome = checkOutcome([
      row("a", 125),
      row("b", 74),
      row("c", 160),
      row("d", 210),
      row("e", 9, { expected: null }),
    ]);
    expect(outcome).toMatchObject({ expected: 4, close: 1 });
    expect(outcome.more.map(({ supplyId, times }) => [supplyId, times])).toEqual([
      ["d", 2.1],
      ["c", 1.6],
    ]);
  });

  it("names what ran out, and counts what was to order and was ordered", () => {
    const outcome = checkOutcome([
      row("a", 100, { ranOut: true, wasToOrder: true }),
      row("b", 100, { wasToOrder: true, wasOrdered: true }),
      row("c", 100, { wasOrdered: true }),
    ]);
    expect(outcome).toMatchObject({ ranOut: ["a"], toOrder: 2, ordered: 1 });
  });
});
