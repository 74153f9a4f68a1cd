import { describe, expect, it } from "vitest";
import { returnedLines } from "#app/parcels/returned-lines.ts";

const supplies = [
  { id: "cube-8", useUnit: "each" as const },
  { id: "bubble", useUnit: "square-foot" as const },
  { id: "tape", useUnit: "foot" as const },
];

describe("what came back", () => {
  it("is only what was filled in, above nothing", () => {
    const typed = { "back:cube-8": "1", "back:bubble": "0" };
    expect(returnedLines(typed, supplies, "imperial")).toEqual({
      lines: [{ supplyId: "cube-8", amount: 12_000 }],
      problems: {},
    });
  });

  it("names the field that can't be read", () => {
    const { lines, problems } = returnedLines({ "back:tape": "some" }, supplies, "imperial");
    expect(lines).toEqual([]);
    expect(Object.keys(problems)).toEqual(["back:tape"]);
  });
});
