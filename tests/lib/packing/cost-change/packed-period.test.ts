import { describe, expect, it } from "vitest";
import { type PackedStyle, parcelsIn } from "#lib/packing/cost-change/packed-period";

const style = (name: string, parcels: number): PackedStyle => ({
  style: name,
  parcels,
  pieces: 3 * parcels,
  card: { perPiece: new Map(), perParcel: new Map() },
  took: new Map(),
});

describe("a period of parcels", () => {
  it("counts parcels, not pieces, over all styles", () => {
    expect(parcelsIn({ styles: [style("paper", 4), style("bubble", 3)] })).toBe(7);
    expect(parcelsIn({ styles: [] })).toBe(0);
  });
});
