import { describe, expect, it } from "vitest";
import { greedyPasses, shuffledPass } from "#lib/cartons/fit/greedy-passes";
import { evenRandom } from "#lib/statistics/even-random";

describe("greedy passes", () => {
  it("take the largest first: by volume, by longest side, by largest face, from every turn of the room", () => {
    const passes = greedyPasses({ room: [99, 99, 99], pieces: [[[5, 5, 5]], [[1, 1, 40]], [[1, 8, 8]]] });
    expect(new Set(passes.map((pass) => JSON.stringify(pass))).size).toBe(36);
    expect([...new Set(passes.map(({ order }) => order.join()))]).toEqual(["0,2,1", "1,2,0", "2,1,0"]);
  });

  it("by chance hold every block once, and are the same for the same seed", () => {
    const random = evenRandom(7);
    const passes = Array.from({ length: 50 }, () => shuffledPass(5, random));
    expect(passes.every(({ order }) => order.toSorted().join() === "0,1,2,3,4")).toBe(true);
    expect(passes.every(({ axes }) => axes.toSorted().join() === "0,1,2")).toBe(true);
    expect(new Set(passes.map(({ order }) => order.join())).size).toBeGreaterThan(25);
    expect(new Set(passes.map(({ axes, keep }) => `${axes} ${keep}`)).size).toBe(12);
    expect(shuffledPass(5, evenRandom(7))).toEqual(passes[0]);
  });
});
