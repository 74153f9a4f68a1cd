import { describe, expect, it } from "vitest";
import { guardWraps } from "#lib/packing/wrap/guard-wraps";
import { inches, mug } from "../bench-shop";

const guard = { layers: 1, overlapUm: inches(2), rimWidthUm: inches(3), bulkUm: 4762.5 };

// Computed from the rule; the rule is common practice, no source.
describe("guardWraps", () => {
  it("folds a pad over a handle, as long as the handle is", () => {
    const [pad] = guardWraps(mug, guard);
    expect(pad?.guards).toBe("handle");
    expect([pad?.need.lengthUm, pad?.need.widthUm]).toEqual([inches(2 * 1.25 + 2), inches(3)]);
  });

  it("winds a stem until it is as wide as its foot", () => {
    const part = (across: number, height: number) => ({ acrossUm: inches(across), heightUm: inches(height) });
    const body = { kind: "stemmed", bowl: part(3, 3), stem: part(0.5, 3), foot: part(2.5, 0.25) } as const;
    const [stem] = guardWraps({ ...mug, body, stickingOut: [] }, guard);
    expect(stem?.guards).toBe("stem");
    // A ring of π/4 (2.5² - 0.5²) sq in, wound of film 3/16 in thick.
    expect((stem?.need.lengthUm ?? 0) / 25_400).toBeCloseTo((Math.PI / 4) * 6 * (16 / 3), 3);
    expect(stem?.need.widthUm).toBe(inches(3));
  });

  it("needs no winding for a stem as wide as its foot", () => {
    const part = { acrossUm: 1000, heightUm: 1000 };
    const body = { kind: "stemmed", bowl: part, stem: part, foot: part } as const;
    expect(guardWraps({ ...mug, body, stickingOut: [] }, guard)).toEqual([]);
  });

  it("puts a ring round each rim, round or square", () => {
    const rings = guardWraps({ ...mug, stickingOut: [], rims: 2 }, guard);
    expect(rings.map(({ guards }) => guards)).toEqual(["rim", "rim"]);
    expect((rings[0]?.need.lengthUm ?? 0) / 25_400).toBeCloseTo(Math.PI * 3.25 + 2, 3);
    const box = { kind: "box", lengthUm: inches(5), widthUm: inches(4), heightUm: inches(3) } as const;
    const [square] = guardWraps({ body: box, stickingOut: [], rims: 1 }, guard);
    expect(square?.need.lengthUm).toBe(inches(20));
  });

  it("takes more with two layers", () => {
    const [one] = guardWraps(mug, guard);
    const [two] = guardWraps(mug, { ...guard, layers: 2 });
    expect((two?.need.lengthUm ?? 0) > (one?.need.lengthUm ?? 0)).toBe(true);
  });

  it("refuses a material without a thickness", () => {
    expect(() => guardWraps(mug, { ...guard, bulkUm: 0 })).toThrow(RangeError);
  });
});
