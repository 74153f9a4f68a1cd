import { describe, expect, it } from "vitest";
import { isAnswerMissing } from "#app/this-week/answer-missing.ts";
import { amountOfUnits } from "#lib/units/amount";

const some = amountOfUnits(5);

describe("answer missing", () => {
  it("is so without supplies, without counts and without use", () => {
    expect(isAnswerMissing([])).toBe(true);
    expect(isAnswerMissing([{ onHand: null, usePerWeek: some }])).toBe(true);
    expect(isAnswerMissing([{ onHand: some, usePerWeek: null }])).toBe(true);
  });

  it("is over once one supply is counted and used", () => {
    const rows = [
      { onHand: null, usePerWeek: null },
      { onHand: some, usePerWeek: some },
    ];
    expect(isAnswerMissing(rows)).toBe(false);
  });
});
