import { describe, expect, it } from "vitest";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { blockVolume } from "#lib/packing/block";
import { cutSet, pinwheelSet } from "../../../../../app/command-line/bench/cartons/cut-set";

const filled = ({ pieces, inside }: ReturnType<typeof cutSet>) =>
  pieces.reduce((sum, { block }) => sum + blockVolume(block), 0) / blockVolume(inside);

describe("a box cut to pieces", () => {
  it("has as many pieces as wanted, and its share of fill", () => {
    for (const fill of [0.8, 0.9, 1]) {
      for (const seed of [1, 2, 3, 4]) {
        const set = cutSet(seed, 8, fill);
        expect(set.pieces).toHaveLength(8);
        expect(filled(set)).toBeCloseTo(fill, 4);
      }
    }
  });

  it("is the same for the same seed, and cut in another way for another", () => {
    expect(cutSet(3, 10, 0.8)).toEqual(cutSet(3, 10, 0.8));
    expect(cutSet(4, 10, 0.8).pieces).not.toEqual(cutSet(3, 10, 0.8).pieces);
  });

  it("is the whole box where it is not cut, and two halves of one side after one cut", () => {
    const whole = cutSet(5, 1, 1);
    const turned = whole.inside;
    expect(placementFaults(whole, [{ turned, alongUm: 0, acrossUm: 0, upUm: 0 }])).toEqual([]);
    const [front, back] = cutSet(5, 2, 1).pieces.map(({ block }) => [
      block.lengthUm,
      block.widthUm,
      block.heightUm,
    ]);
    const box = [whole.inside.lengthUm, whole.inside.widthUm, whole.inside.heightUm];
    const cut = box.findIndex((side, axis) => front?.[axis] !== side);
    expect((front?.[cut] ?? 0) + (back?.[cut] ?? 0)).toBe(box[cut]);
    expect(box.filter((side, axis) => front?.[axis] === side && back?.[axis] === side)).toHaveLength(2);
  });

  it("may start as a pinwheel, whose five parts stand round each other", () => {
    const set = pinwheelSet(6, 5, 1);
    expect(filled(set)).toBeCloseTo(1, 12);
    const [a, b, c, d] = set.pieces.map(({ block }) => block);
    if (!a || !b || !c || !d) throw new Error("no pinwheel");
    expect(a.lengthUm + b.lengthUm).toBe(set.inside.lengthUm);
    expect(b.widthUm + c.widthUm).toBe(set.inside.widthUm);
    expect(c.lengthUm + d.lengthUm).toBe(set.inside.lengthUm);
    expect(d.widthUm + a.widthUm).toBe(set.inside.widthUm);
    expect(filled(pinwheelSet(6, 9, 0.8))).toBeCloseTo(0.8, 4);
  });
});
