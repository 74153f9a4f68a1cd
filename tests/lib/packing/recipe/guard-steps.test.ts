import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { guardSteps, padThickness } from "#lib/packing/recipe/guard-steps";
import { inches, looseFill, mug, paper, smallBubble } from "../bench-shop";

const handle = { part: "handle", where: "right", outUm: inches(1.25), alongUm: inches(3) } as const;
const spout = { ...handle, part: "spout", where: "left" } as const;
const wordsOf = (stickingOut: (typeof mug)["stickingOut"]) =>
  guardSteps({ ...mug, stickingOut }, smallBubble, USUAL_HABITS, "imperial").steps.map(({ words }) => words);

describe("guardSteps", () => {
  it("pads the handle of a mug with half a piece of bubble", () => {
    const { steps, guards } = guardSteps(mug, smallBubble, USUAL_HABITS, "imperial");
    expect(steps.map(({ words, used, per }) => [words, used, per])).toEqual([
      ["Pad the handle with bubble", "½ piece", "piece"],
    ]);
    expect(guards).toBe(1);
  });

  it("names what it pads, once each, and many together", () => {
    expect(wordsOf([handle, spout])).toEqual(["Pad the handle and the spout with bubble"]);
    expect(wordsOf([handle, { ...handle, where: "left" }])).toEqual(["Pad the handles with bubble"]);
    const foot = { ...handle, part: "foot", where: "bottom" } as const;
    expect(wordsOf([foot, foot, spout])).toEqual(["Pad the feet and the spout with bubble"]);
    expect(wordsOf([{ ...handle, part: "other" }])).toEqual(["Pad the part that sticks out with bubble"]);
  });

  it("winds the stem first and rings the rims last", () => {
    const part = (across: number, height: number) => ({ acrossUm: inches(across), heightUm: inches(height) });
    const body = { kind: "stemmed", bowl: part(3, 3), stem: part(0.5, 3), foot: part(2.5, 0.25) } as const;
    const { steps, guards } = guardSteps({ ...mug, body, rims: 1 }, smallBubble, USUAL_HABITS, "imperial");
    expect(steps.map(({ words }) => words.split(" ")[0])).toEqual(["Wind", "Pad", "Put"]);
    expect(guards).toBe(3);
  });

  it("does nothing for a plain piece", () => {
    expect(guardSteps({ ...mug, stickingOut: [] }, paper, USUAL_HABITS, "imperial").steps).toEqual([]);
  });
});

describe("padThickness", () => {
  it("is the film's own, and the crumpled sheet's", () => {
    expect(padThickness(smallBubble, USUAL_HABITS)).toBe(4762.5);
    expect(padThickness(paper, USUAL_HABITS)).toBe(USUAL_HABITS.bulkUm.loose["packing-paper"]);
    expect(padThickness(looseFill, USUAL_HABITS)).toBe(0);
  });
});
