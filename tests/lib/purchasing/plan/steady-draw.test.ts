import { describe, expect, it } from "vitest";
import { shuffled, steadyDraw } from "#lib/purchasing/plan/steady-draw";

describe("steady draws", () => {
  it("follow the generator with factor 48271 modulo 2^31 - 1", () => {
    // The generator as the C++ standard names it (minstd_rand), from memory: from 1 the 10,000th value is 399268537.
    const factor = 48_271n;
    const modulus = 2_147_483_647n;
    let state = 1n;
    for (let turn = 0; turn < 10_000; turn++) state = (state * factor) % modulus;
    expect(state).toBe(399_268_537n);
    const draw = steadyDraw();
    let own = 20_011n;
    for (let turn = 0; turn < 100; turn++) {
      own = (own * factor) % modulus;
      expect(draw(1_000)).toBe(Number((own * 1_000n) / modulus));
    }
  });

  it("mix a list without losing anything, each place as likely", () => {
    const draw = steadyDraw();
    const firsts = new Map<number, number>();
    for (let turn = 0; turn < 3_000; turn++) {
      const mixed = shuffled([1, 2, 3], draw);
      expect(mixed.toSorted()).toEqual([1, 2, 3]);
      firsts.set(mixed[0] ?? 0, (firsts.get(mixed[0] ?? 0) ?? 0) + 1);
    }
    for (const each of [1, 2, 3]) expect(Math.abs((firsts.get(each) ?? 0) - 1_000)).toBeLessThan(130);
  });
});
