import { describe, expect, it } from "vitest";
import { parcelKey } from "#app/pack/parcel-key.ts";

describe("parcel key", () => {
  it("marks version 4 and the variant as RFC 9562, section 5.4, lays them out", () => {
    expect(parcelKey((bytes) => bytes.fill(0xff))).toBe("ffffffff-ffff-4fff-bfff-ffffffffffff");
    expect(parcelKey((bytes) => bytes.fill(0))).toBe("00000000-0000-4000-8000-000000000000");
  });

  it("differs from one parcel to the next", () => {
    const fill = (bytes: Uint8Array): void => {
      crypto.getRandomValues(bytes);
    };
    const keys = new Set(Array.from({ length: 500 }, () => parcelKey(fill)));
    expect(keys.size).toBe(500);
  });
});
