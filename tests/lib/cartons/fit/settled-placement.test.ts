import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { settledPlacement } from "#lib/cartons/fit/settled-placement";
import { sidesBlock } from "#lib/cartons/fit/sides";

const place = (
  sides: readonly [number, number, number],
  alongUm: number,
  acrossUm: number,
  upUm: number,
) => ({
  turned: sidesBlock(sides),
  alongUm,
  acrossUm,
  upUm,
});

describe("a settled placement", () => {
  it("rests on the base, or on what lies below", () => {
    const settled = settledPlacement(
      [
        place([4, 4, 2], 0, 0, 9),
        place([2, 2, 3], 1, 1, 4),
        place([1, 1, 1], 6, 0, 5),
        place([2, 2, 1], 3, 3, 12),
      ],
      1,
    );
    expect(settled.map(({ upUm }) => upUm)).toEqual([4, 1, 1, 6]);
  });

  it("leaves beside each other what only touches", () => {
    const settled = settledPlacement([place([2, 2, 5], 0, 0, 0), place([2, 2, 2], 2, 0, 7)], 0);
    expect(settled.map(({ upUm }) => upUm)).toEqual([0, 0]);
  });

  it("rises nowhere and moves nothing sideways", () => {
    const column = fc.array(fc.tuple(fc.nat(5), fc.nat(5), fc.integer({ min: 1, max: 4 }), fc.nat(3)), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(column, (given) => {
        let up = 0;
        const placement = given.map(([along, across, height, gap]) => {
          const placed = place([3, 3, height], along, across, up + gap);
          up += gap + height;
          return placed;
        });
        const settled = settledPlacement(placement, 0);
        settled.forEach((after, at) => {
          const before = placement[at];
          if (!before) throw new Error("no such piece");
          expect(after).toEqual({ ...before, upUm: after.upUm });
          expect(after.upUm).toBeLessThanOrEqual(before.upUm);
          const rests = settled.some(
            (other) =>
              other.upUm + other.turned.heightUm === after.upUm &&
              Math.abs(other.alongUm - after.alongUm) < 3 &&
              Math.abs(other.acrossUm - after.acrossUm) < 3,
          );
          expect(after.upUm === 0 || rests).toBe(true);
        });
      }),
    );
  });
});
