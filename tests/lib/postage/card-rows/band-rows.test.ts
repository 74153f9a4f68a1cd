import { describe, expect, it } from "vitest";
import { bandRows, sidesFromText } from "#lib/postage/card-rows/band-rows";
import { NO_WALLS } from "#lib/postage/size-walls";
import { plainBand, stepUpTo, typed } from "../rate-card-fixture";

describe("a band as rows", () => {
  const under = (texts: readonly string[]) => ["", ...texts];
  const band = plainBand([stepUpTo("8", "oz", [460])]);

  it("is its steps alone where it has no name and no walls", () => {
    expect(bandRows(band, under, 2, true)).toEqual([["step", "up to", "8 oz", "", "4.60"]]);
  });

  it("begins with its name where it is not the first, and says its walls", () => {
    const walls = { ...NO_WALLS, sides: [typed("45", "cm"), typed("35", "cm"), typed("16", "cm")] as const };
    expect(bandRows({ ...band, walls, countsSize: false }, under, 2, false).slice(0, 3)).toEqual([
      ["band", "name", ""],
      ["band", "sides", "45 cm x 35 cm x 16 cm"],
      ["band", "by size", "no"],
    ]);
  });
});

describe("three sides", () => {
  it("take the unit of the last one where they have none", () => {
    expect(sidesFromText("45 x 35 x 16 cm", "metric")).toEqual([
      typed("45", "cm"),
      typed("35", "cm"),
      typed("16", "cm"),
    ]);
    expect(sidesFromText("18 in × 30 cm × 6 in", "imperial")?.[1]).toEqual(typed("30", "cm"));
  });

  it("are three, with a unit", () => {
    expect(sidesFromText("45 x 35 cm", "metric")).toBeNull();
    expect(sidesFromText("45 x 35 x 16", "metric")).toBeNull();
    expect(sidesFromText("45 x 35 x 16 x 2 cm", "metric")).toBeNull();
  });
});
