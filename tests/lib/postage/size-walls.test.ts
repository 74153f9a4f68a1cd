import { describe, expect, it } from "vitest";
import { NO_WALLS, type SizeWalls, wallsHit } from "#lib/postage/size-walls";
import { sized, typed, weighed } from "./rate-card-fixture";

// Small parcel of one national post, date unknown: up to 45 x 35 x 16 cm and 2 kg (seen on its page, no address kept).
const small: SizeWalls = {
  ...NO_WALLS,
  sides: [typed("16", "cm"), typed("45", "cm"), typed("35", "cm")],
  weight: typed("2", "kg"),
};
const hits = (walls: SizeWalls, sizes: string, weight = "1 kg") =>
  wallsHit(walls, sized(sizes), weighed(weight)).map(({ words }) => words);

describe("size walls", () => {
  it("let through what is just as large, turned any way", () => {
    expect(hits(small, "35 x 16 x 45 cm", "2 kg")).toEqual([]);
  });

  it("turn away a 17 cm carton at any weight, and say why", () => {
    expect(hits(small, "17 x 17 x 17 cm", "100 g")).toEqual([
      "The shortest side is 17 cm; at most 16 cm is taken.",
    ]);
  });

  it("name each limit that a parcel is over", () => {
    expect(hits(small, "46 x 36 x 10 cm", "2.001 kg")).toEqual([
      "The longest side is 46 cm; at most 45 cm is taken.",
      "The second side is 36 cm; at most 35 cm is taken.",
      "The parcel weighs 2.001 kg; at most 2 kg is taken.",
    ]);
  });

  it("hold the longest side, and length and girth, each in its own unit", () => {
    const walls = { ...NO_WALLS, longest: typed("27", "in"), lengthAndGirth: typed("108", "in") };
    expect(hits(walls, "27 x 20 x 20 in")).toEqual([]);
    expect(hits(walls, "27.01 x 21 x 20 in")).toEqual([
      "The longest side is 27.01 in; at most 27 in is taken.",
      "Length and girth are 109.01 in; at most 108 in is taken.",
    ]);
  });

  it("do not call a side of 12 1/16 in longer than 12 1/16 in, which is no whole number of micrometres", () => {
    const walls = { ...NO_WALLS, longest: typed("12 1/16", "in") };
    expect(hits(walls, "12 1/16 x 8 x 8 in")).toEqual([]);
    expect(hits(walls, "12 5/64 x 8 x 8 in")).toHaveLength(1);
  });

  it("sort limits of different units by their length", () => {
    const walls: SizeWalls = {
      ...NO_WALLS,
      sides: [typed("300", "mm"), typed("40", "cm"), typed("20", "cm")],
    };
    expect(hits(walls, "20 x 30 x 40 cm")).toEqual([]);
    expect(hits(walls, "20 x 30.1 x 40 cm")).toHaveLength(1);
  });

  it("look at the weight alone where sizes are not known", () => {
    expect(wallsHit(small, null, weighed("3 kg")).map(({ wall }) => wall)).toEqual(["weight"]);
    expect(wallsHit(small, null, weighed("2 kg"))).toEqual([]);
  });
});
