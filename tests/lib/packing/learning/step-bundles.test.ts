import { describe, expect, it } from "vitest";
import { stepBundles } from "#lib/packing/learning/step-bundles";
import { shelf } from "./shelf";

describe("step bundles", () => {
  it("hold together what always goes together, and nothing else", () => {
    const weeks = [3, 5, 2, 8].map((times, at) => ({
      "mug/wrap": { times, units: 3 },
      "mug/fill": { times, units: 9 },
      "vase/wrap": { times: [4, 0, 6, 1][at] ?? 0, units: 2 },
    }));
    const bundles = stepBundles(shelf([100, 90, 80, 70, 60], weeks));
    expect(bundles.map(({ stepKeys }) => stepKeys)).toEqual([["mug/wrap", "mug/fill"], ["vase/wrap"]]);
    expect(bundles[0]?.shares).toEqual([0.25, 0.75]);
    expect(bundles[0]?.byCards).toEqual([36, 60, 24, 96]);
    expect(bundles[0]?.squares).toEqual([270, 450, 180, 720]);
    expect(bundles[1]?.byCards).toEqual([8, 0, 12, 2]);
  });

  it("are of one recipe, whatever else goes together", () => {
    const weeks = [3, 5, 2].map((times) => ({
      "mug/wrap": { times, units: 3 },
      "vase/wrap": { times, units: 2 },
    }));
    const keys = stepBundles(shelf([100, 80, 50, 40], weeks)).map(({ stepKeys }) => stepKeys);
    expect(keys).toEqual([["mug/wrap"], ["vase/wrap"]]);
  });

  it("part a recipe's new version from the old one", () => {
    const weeks = [
      { "mug/wrap/1": { times: 4, units: 3 } },
      { "mug/wrap/1": { times: 2, units: 3 }, "mug/wrap/2": { times: 2, units: 4 } },
      { "mug/wrap/2": { times: 5, units: 4 } },
    ];
    const keys = stepBundles(shelf([100, 88, 74, 54], weeks)).map(({ stepKeys }) => stepKeys);
    expect(keys).toEqual([["mug/wrap/1"], ["mug/wrap/2"]]);
  });

  it("leave out a step that was never used", () => {
    expect(stepBundles(shelf([10, 10], [{ "mug/wrap": { times: 0, units: 3 } }]))).toEqual([]);
  });
});
