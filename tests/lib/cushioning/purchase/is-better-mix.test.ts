import { describe, expect, it } from "vitest";
import { isBetterMix } from "#lib/cushioning/purchase/is-better-mix";

const mix = (parcels: number, share: number, totalMinor: number) => ({
  lack: { parcels, share },
  costs: { totalMinor },
});

describe("the better of two mixes", () => {
  it("packs more parcels, whatever it costs", () => {
    expect(isBetterMix(mix(1, 5, 9000), mix(1.5, 0, 10))).toBe(true);
    expect(isBetterMix(mix(1.5, 0, 10), mix(1, 5, 9000))).toBe(false);
  });

  it("then keeps more of what is to be kept", () => {
    expect(isBetterMix(mix(1, 0.1, 9000), mix(1, 0.2, 10))).toBe(true);
  });

  it("then costs less, and is no better where all is the same", () => {
    expect(isBetterMix(mix(0, 0, 99), mix(0, 0, 100))).toBe(true);
    expect(isBetterMix(mix(0, 0, 100), mix(0, 0, 100))).toBe(false);
    expect(isBetterMix(mix(0.00001, 0, 99), mix(0, 0, 100))).toBe(true);
  });
});
