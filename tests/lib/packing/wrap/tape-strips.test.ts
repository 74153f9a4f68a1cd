import { describe, expect, it } from "vitest";
import { tapeStrips } from "#lib/packing/wrap/tape-strips";

describe("tapeStrips", () => {
  it("adds the strips of wraps and guards", () => {
    expect(tapeStrips({ wraps: 2, guards: 1 }, { perWrap: 3, perGuard: 1 })).toBe(7);
  });

  it("are none where nothing is bound", () => {
    expect(tapeStrips({ wraps: 0, guards: 0 }, { perWrap: 3, perGuard: 1 })).toBe(0);
  });

  it("refuses half a wrap", () => {
    expect(() => tapeStrips({ wraps: 0.5, guards: 0 }, { perWrap: 3, perGuard: 1 })).toThrow(RangeError);
  });
});
