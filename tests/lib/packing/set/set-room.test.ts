import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockVolume } from "#lib/packing/block";
import { cartonRoom } from "#lib/packing/fill/carton-room";
import { setRoom } from "#lib/packing/set/set-room";
import { inches } from "../bench-shop";

const block = (length: number, width: number, height: number) => ({
  lengthUm: inches(length),
  widthUm: inches(width),
  heightUm: inches(height),
});
const set = { apart: null, wallUm: 0, thisSideUp: true };

describe("setRoom", () => {
  it("stands six in the grid that suits the carton", () => {
    const { room, grid } = setRoom(block(16, 12, 8), { ...set, block: block(4, 4, 4), pieces: 6 }, inches(2));
    expect([room.kind, grid]).toEqual(["fits", { rows: 2, columns: 3, tiers: 1 }]);
  });

  it("stacks where only height is left", () => {
    const { grid } = setRoom(block(8, 8, 16), { ...set, block: block(4, 4, 4), pieces: 3 }, 0);
    expect(grid).toEqual({ rows: 1, columns: 1, tiers: 3 });
  });

  it("says where a set does not fit", () => {
    const { room } = setRoom(block(8, 8, 8), { ...set, block: block(5, 5, 5), pieces: 2 }, 0);
    expect([room.kind, room.leavesUm]).toEqual(["does-not-fit", inches(-1)]);
  });

  it("puts a lid beside its pot, and fills less by its room", () => {
    const pot = { ...set, block: block(6, 6, 6), pieces: 1 };
    const alone = setRoom(block(16, 12, 12), pot, inches(2));
    const lid = block(3, 3, 2);
    const both = setRoom(block(16, 12, 12), { ...pot, apart: lid }, inches(2));
    expect(both.room.kind).toBe("fits");
    expect(alone.room.voidMl - both.room.voidMl).toBeCloseTo(blockVolume(lid), 6);
  });

  it("gives one piece the room that it has by itself", () => {
    const side = fc.integer({ min: 10_000, max: 300_000 });
    const blocks = fc.record({ lengthUm: side, widthUm: side, heightUm: side });
    fc.assert(
      fc.property(blocks, blocks, fc.boolean(), (inside, piece, thisSideUp) => {
        const load = { block: piece, ml: blockVolume(piece), thisSideUp };
        const { room } = setRoom(
          inside,
          { block: piece, pieces: 1, apart: null, wallUm: 0, thisSideUp },
          1000,
        );
        expect(room).toEqual(cartonRoom(inside, load, 1000));
      }),
    );
  });

  it("never leaves more for one piece more", () => {
    const pieces = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(pieces, (count) => {
        const few = setRoom(block(20, 16, 12), { ...set, block: block(4, 3, 3), pieces: count }, 0);
        const more = setRoom(block(20, 16, 12), { ...set, block: block(4, 3, 3), pieces: count + 1 }, 0);
        expect(more.room.leavesUm).toBeLessThanOrEqual(few.room.leavesUm);
        expect(more.loadMl).toBeGreaterThan(few.loadMl);
      }),
    );
  });
});
