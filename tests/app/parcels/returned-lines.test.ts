import { describe, expect, it } from "vitest";
import { returnedLines } from "#app/parcels/returned-lines.ts";
import { stillOut } from "#app/parcels/still-out.ts";
import { amountOfUnits } from "#lib/units/amount";

const supplies = [
  { id: "cube-8", useUnit: "each" as const },
  { id: "bubble", useUnit: "square-foot" as const },
  { id: "tape", useUnit: "foot" as const },
];

const out = new Map([
  ["cube-8", amountOfUnits(1)],
  ["bubble", amountOfUnits(6)],
  ["tape", amountOfUnits(7.25)],
]);

describe("what came back", () => {
  it("is only what was filled in, above nothing", () => {
    const typed = { "back:cube-8": "1", "back:bubble": "0" };
    expect(returnedLines(typed, supplies, "imperial", out)).toEqual({
      lines: [{ supplyId: "cube-8", amount: 12_000 }],
      problems: {},
    });
  });

  it("names the field that can't be read", () => {
    const { lines, problems } = returnedLines({ "back:tape": "some" }, supplies, "imperial", out);
    expect(lines).toEqual([]);
    expect(Object.keys(problems)).toEqual(["back:tape"]);
  });

  it("is no more than went out and has not come back", () => {
    const movements = [
      { supplyId: "bubble", amount: amountOfUnits(-6) },
      { supplyId: "bubble", amount: amountOfUnits(4) },
    ];
    const still = stillOut(movements);
    expect(returnedLines({ "back:bubble": "2" }, supplies, "imperial", still).problems).toEqual({});
    expect(returnedLines({ "back:bubble": "3" }, supplies, "imperial", still)).toEqual({
      lines: [],
      problems: { "back:bubble": "No more than 2 sq ft of it went out and can come back." },
    });
    expect(returnedLines({ "back:tape": "1" }, supplies, "imperial", still).lines).toEqual([]);
  });
});
