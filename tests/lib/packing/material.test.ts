import { describe, expect, it } from "vitest";
import { isMaterial, MATERIALS, USUAL_LAYER_UM } from "#lib/packing/material";

describe("materials", () => {
  it("are each known by their name, and nothing else is", () => {
    expect(MATERIALS.every(isMaterial)).toBe(true);
    expect(["", "toString", "bubble"].filter(isMaterial)).toEqual([]);
  });

  it("have a thickness unless they are poured or counted", () => {
    const without = MATERIALS.filter((material) => USUAL_LAYER_UM[material] === 0);
    expect(without).toEqual(["loose-fill", "rubber-band"]);
  });

  // A home mover measured a ream of 500 sheets at 1.5 in (2014): one person's reading, no address.
  it("take packing paper to be as thick as a sheet of a measured ream, to the micrometre", () => {
    expect(USUAL_LAYER_UM["packing-paper"]).toBe(Math.round((1.5 * 25_400) / 500));
  });
});
