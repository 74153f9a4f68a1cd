import { describe, expect, it } from "vitest";
import { boardCaliper, type Flute, flutesOf } from "#lib/cartons/board/board-caliper";

const FLUTES: readonly Flute[] = ["A", "B", "C", "E"];

describe("boardCaliper", () => {
  // A second guide's inches, on which the first one's millimetres agree within half a millimetre: 3/16, 1/8, 5/32, 1/16 in.
  it.each([
    ["A", 3 / 16],
    ["B", 1 / 8],
    ["C", 5 / 32],
    ["E", 1 / 16],
  ] as const)("of %s flute is near %s in", (flute, inches) => {
    expect(Math.abs(boardCaliper([flute]).um - inches * 25_400)).toBeLessThan(500);
  });

  it("adds up double wall: BC is about 0.28 in, from memory", () => {
    expect(boardCaliper(["B", "C"])).toEqual({ um: 7000, from: "addedUp" });
    expect(boardCaliper(["B", "C"]).um / 25_400).toBeCloseTo(0.28, 2);
  });

  it("says which thickness is printed", () => {
    expect(FLUTES.map((flute) => boardCaliper([flute]).from)).toEqual(FLUTES.map(() => "printed"));
  });

  it("refuses board without flutes or with four", () => {
    expect(() => boardCaliper([])).toThrow(RangeError);
    expect(() => boardCaliper(["A", "A", "A", "A"])).toThrow(RangeError);
  });
});

describe("flutesOf", () => {
  it("reads letters in any case", () => {
    expect(flutesOf(" bc ")).toEqual(["B", "C"]);
    expect(flutesOf("E")).toEqual(["E"]);
  });

  it.each(["", "D", "BX", "ABCE", "toString", "B C"])("does not read %j", (text) => {
    expect(flutesOf(text)).toBeNull();
  });
});
