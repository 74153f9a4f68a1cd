import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bodyBlock, guardedBlock } from "#lib/packing/piece/piece-block";
import { inches, mug } from "../bench-shop";

describe("bodyBlock", () => {
  it("is as wide as the widest part of a stemmed glass, and as high as all three", () => {
    const part = (acrossUm: number, heightUm: number) => ({ acrossUm, heightUm });
    const glass = { kind: "stemmed", bowl: part(80, 90), stem: part(10, 70), foot: part(85, 5) } as const;
    expect(bodyBlock(glass)).toEqual({ lengthUm: 85, widthUm: 85, heightUm: 165 });
  });

  it("lies flat for a plate, and is longer where it is oblong", () => {
    const plate = { kind: "flat", acrossUm: 100, longUm: null, thickUm: 10 } as const;
    expect(bodyBlock(plate)).toEqual({ lengthUm: 100, widthUm: 100, heightUm: 10 });
    expect(bodyBlock({ ...plate, longUm: 150 }).lengthUm).toBe(150);
  });

  it("is the box itself", () => {
    expect(bodyBlock({ kind: "box", lengthUm: 3, widthUm: 2, heightUm: 1 })).toEqual({
      lengthUm: 3,
      widthUm: 2,
      heightUm: 1,
    });
  });
});

describe("guardedBlock", () => {
  it("adds handle and guard on the one side where they are", () => {
    expect(guardedBlock(mug, 5000)).toEqual({
      lengthUm: inches(4.5) + 5000,
      widthUm: inches(3.25),
      heightUm: inches(4),
    });
  });

  it("counts the furthest of two parts on one side, and both of two sides", () => {
    const out = (where: "left" | "right" | "top", outUm: number) =>
      ({ part: "other", where, outUm, alongUm: 1000 }) as const;
    const pot = { ...mug, stickingOut: [out("left", 10_000), out("left", 30_000), out("right", 20_000)] };
    expect(guardedBlock(pot, 0).lengthUm).toBe(inches(3.25) + 50_000);
    const knob = { ...mug, stickingOut: [out("top", 15_000)] };
    expect(guardedBlock(knob, 1000).heightUm).toBe(inches(4) + 16_000);
  });

  it("lays a ring round the body and over the lip, and under the foot only with two rims", () => {
    const bare = { ...mug, stickingOut: [] };
    expect(guardedBlock({ ...bare, rims: 1 }, 5000)).toEqual({
      lengthUm: inches(3.25) + 10_000,
      widthUm: inches(3.25) + 10_000,
      heightUm: inches(4) + 5000,
    });
    expect(guardedBlock({ ...bare, rims: 2 }, 5000).heightUm).toBe(inches(4) + 10_000);
  });

  it("never shrinks with a thicker guard", () => {
    const thick = fc.nat(50_000);
    fc.assert(
      fc.property(thick, thick, (one, other) => {
        const thin = guardedBlock(mug, Math.min(one, other));
        const wide = guardedBlock(mug, Math.max(one, other));
        expect(wide.lengthUm >= thin.lengthUm && wide.heightUm >= thin.heightUm).toBe(true);
      }),
    );
  });

  it("refuses a guard below zero", () => {
    expect(() => guardedBlock(mug, -1)).toThrow(RangeError);
  });
});
