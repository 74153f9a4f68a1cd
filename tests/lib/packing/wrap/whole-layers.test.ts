import { describe, expect, it } from "vitest";
import { wholeLayers } from "#lib/packing/wrap/whole-layers";

const wrap = { layers: 2, thickUm: 0, overlapUm: 0, endMarginUm: 0 };

describe("wholeLayers", () => {
  it("gives the layers back", () => {
    expect(wholeLayers("test", wrap, [1, 2])).toBe(2);
  });

  it.each([
    [{ ...wrap, layers: 0 }, [1]],
    [{ ...wrap, layers: 1.5 }, [1]],
    [{ ...wrap, thickUm: -1 }, [1]],
    [{ ...wrap, endMarginUm: Number.NaN }, [1]],
    [wrap, [0]],
  ])("refuses %j round %j", (wrong, sizes) => {
    expect(() => wholeLayers("test", wrong, sizes)).toThrow(RangeError);
  });
});
