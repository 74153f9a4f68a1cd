import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxCompression, cartonCompression } from "#lib/cartons/strength/box-compression";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

const inches = (count: number) => count * MICROMETRES_PER_INCH;
const inside = { lengthUm: inches(16), widthUm: inches(12), heightUm: inches(10) };

describe("boxCompression", () => {
  it("gives the same carton in newtons and metres", () => {
    const positive = fc.double({ min: 0.1, max: 100, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (edgeCrush, caliper, perimeter) => {
        const pounds = boxCompression({ edgeCrush, caliper, perimeter });
        // 1 lbf is 4.4482216 N, 1 in is 0.0254 m (international yard and pound agreement, 1959).
        const newtons = boxCompression({
          edgeCrush: (edgeCrush * 4.448_221_6) / 0.0254,
          caliper: caliper * 0.0254,
          perimeter: perimeter * 0.0254,
        });
        expect(newtons / 4.448_221_6 / pounds).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each([0, -1, Number.NaN])("refuses %s", (wrong) => {
    expect(() => boxCompression({ edgeCrush: 32, caliper: wrong, perimeter: 56 })).toThrow(RangeError);
  });
});

describe("cartonCompression", () => {
  it("tells edge crush from burst where only that is printed, and says so", () => {
    const of = (rating: Parameters<typeof cartonCompression>[0]["rating"]) =>
      cartonCompression({ rating, inside, boardUm: inches(0.16) });
    const printed = of({ kind: "edgeCrush", wall: "single", poundsPerInch: 32 });
    expect(printed).toMatchObject({ edgeCrushFrom: "printed", isShallow: false });
    expect(of({ kind: "burst", wall: "single", psi: 200 })).toEqual({ ...printed, edgeCrushFrom: "paired" });
  });

  it("is not known of an unrated carton", () => {
    expect(cartonCompression({ rating: { kind: "unrated" }, inside, boardUm: 4000 })).toBeNull();
  });

  it("says where a carton is too shallow for the formula: under a seventh of its perimeter", () => {
    const rating = { kind: "edgeCrush", wall: "single", poundsPerInch: 32 } as const;
    const shallow = (height: number) =>
      cartonCompression({ rating, inside: { ...inside, heightUm: inches(height) }, boardUm: 4000 })
        ?.isShallow;
    expect(shallow(8)).toBe(false);
    expect(shallow(7.99)).toBe(true);
  });
});
