import { describe, expect, it } from "vitest";
import { bodyVolume, hollowVolume } from "#lib/packing/piece/body-volume";

const part = (acrossUm: number, heightUm: number) => ({ acrossUm, heightUm });

// Elementary geometry.
describe("bodyVolume", () => {
  it("is π/4 litres for a cylinder of ten centimetres", () => {
    expect(bodyVolume({ kind: "cylinder", ...part(100_000, 100_000) })).toBeCloseTo(785.398, 3);
  });

  it("is length times width times height for a box", () => {
    const box = { kind: "box", lengthUm: 200_000, widthUm: 100_000, heightUm: 50_000 } as const;
    expect(bodyVolume(box)).toBe(1000);
  });

  it("tells a round plate from a square tile", () => {
    const plate = { kind: "flat", acrossUm: 100_000, longUm: null, thickUm: 10_000 } as const;
    expect(bodyVolume(plate)).toBeCloseTo(78.5398, 3);
    expect(bodyVolume({ ...plate, longUm: 100_000 })).toBe(100);
  });

  it("is the sum of bowl, stem and foot for a glass", () => {
    const bowl = part(80_000, 90_000);
    const stem = part(10_000, 80_000);
    const foot = part(70_000, 5_000);
    const sum = [bowl, stem, foot].reduce((ml, each) => ml + bodyVolume({ kind: "cylinder", ...each }), 0);
    expect(bodyVolume({ kind: "stemmed", bowl, stem, foot })).toBeCloseTo(sum, 9);
  });
});

describe("hollowVolume", () => {
  const body = { kind: "box", lengthUm: 100_000, widthUm: 100_000, heightUm: 100_000 } as const;

  it("takes a volume as it is, and a share of the body", () => {
    expect(hollowVolume({ kind: "volume", ml: 250 }, body)).toBe(250);
    expect(hollowVolume({ kind: "share", share: 0.25 }, body)).toBe(250);
  });

  it("reckons round and square hollows from their inner sizes", () => {
    expect(hollowVolume({ kind: "round", acrossUm: 100_000, deepUm: 100_000 }, body)).toBeCloseTo(785.398, 3);
    const square = { kind: "square", lengthUm: 50_000, widthUm: 50_000, deepUm: 100_000 } as const;
    expect(hollowVolume(square, body)).toBe(250);
  });
});
