import { describe, expect, it } from "vitest";
import { stackedLayer } from "#lib/packing/calibration/stacked-layer";

describe("stackedLayer", () => {
  // A physicist's stack of small bubble came to 0.432 cm a sheet; one person's reading.
  it("finds 4.32 mm in a stack of ten, near to 3/16 in", () => {
    const layer = stackedLayer({ heightUm: 43_200, layers: 10 }, 4762.5);
    expect([layer.kind, layer.value]).toEqual(["plausible", 4320]);
  });

  it("doubts centimetres read as inches", () => {
    expect(stackedLayer({ heightUm: 109_728, layers: 10 }, 4762.5).kind).toBe("doubtful");
  });

  it("refuses half a layer", () => {
    expect(() => stackedLayer({ heightUm: 43_200, layers: 0.5 }, 4762.5)).toThrow(RangeError);
  });
});
