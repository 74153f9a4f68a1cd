import { describe, expect, it } from "vitest";
import { cutChoice, toBeat, wholeChoice } from "#lib/cartons/choice/carton-choice";
import { cutDown } from "#lib/cartons/choice/cut-down";
import { fitBook } from "#lib/cartons/choice/fit-book";
import { firstHeld } from "#lib/cartons/choice/held-load";
import { pricedCartons } from "#lib/cartons/choice/priced-carton";
import { CENT, carton, MUG, MUG_TERMS, mugRequest } from "./mug-bench";

const cube8 = carton("cube-8", [8, 8, 8], 80, { onHand: null });
const cube10 = carton("cube-10", [10, 10, 10], 100, { ageing: "sits" });
const request = mugRequest([cube8, cube10], { minuteValue: 10 * CENT });
function heldIn(each: typeof cube8) {
  const { clearance, effort, loadType, trust } = request;
  const question = {
    fitIn: fitBook({ pieces: MUG.pieces, clearance, effort }),
    use: { type: loadType, trust },
  };
  const { held } = firstHeld(pricedCartons(MUG, [each], MUG_TERMS), question);
  if (held === null) throw new RangeError(`heldIn requires a carton that holds the mug, got ${each.id}`);
  return held;
}
const [small, large] = [heldIn(cube8), heldIn(cube10)];
const cut = cutDown(large, request);

describe("an answer", () => {
  it("holds its cost against the cheapest, its price counted and as spent", () => {
    expect(wholeChoice("cheapest", small, null, null)).toMatchObject({ more: null, stock: "countFirst" });
    const answer = wholeChoice("toUseUp", large, small, cut);
    const value = large.cost.totalValue - small.cost.totalValue;
    expect(answer.more?.value).toBeCloseTo(value, 3);
    expect(answer.more?.asSpentValue).toBeCloseTo(value - 100 * CENT, 3);
  });

  it("costs as cut down what it costs with the minutes", () => {
    if (cut === null) throw new Error("the 10 in cube is worth cutting");
    const answer = cutChoice(large, cut, small);
    expect(answer.total.value).toBe(cut.netValue);
    expect(answer.total.asSpentValue).toBe(cut.netValue - 100 * CENT);
    expect(answer.cost).toBe(large.cost);
  });
});

describe("what is to be beaten", () => {
  it("is the least of all answers with their own cuts, in both ways of counting", () => {
    const answers = [wholeChoice("cheapest", small, null, null), wholeChoice("toUseUp", large, small, cut)];
    expect(toBeat(answers)).toEqual({
      value: small.cost.totalValue,
      asSpentValue: Math.min(small.cost.totalValue, (cut?.netValue ?? 0) - 100 * CENT),
      hasPostage: true,
    });
    expect(toBeat(answers).asSpentValue).toBeLessThan(small.cost.totalValue);
  });

  it("is anything where there is no answer", () => {
    const none = Number.POSITIVE_INFINITY;
    expect(toBeat([])).toEqual({ value: none, asSpentValue: none, hasPostage: false });
  });
});
