import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestCut } from "#lib/cartons/choice/best-cut";
import { toBeat } from "#lib/cartons/choice/carton-choice";
import { cutDown } from "#lib/cartons/choice/cut-down";
import { pricedCartons } from "#lib/cartons/choice/priced-carton";
import { CENT, carton, MUG, MUG_TERMS, mugRequest } from "./mug-bench";

const side = fc.integer({ min: 7, max: 16 });

describe("the best carton to cut down", () => {
  it("is the one that costs least of all cut one by one, though few are searched", () => {
    let found = 0;
    fc.assert(
      fc.property(
        fc.array(fc.tuple(side, side, side, fc.integer({ min: 0, max: 300 })), {
          minLength: 1,
          maxLength: 6,
        }),
        (drawn) => {
          const cartons = drawn.map(([l, w, h, cents], at) => carton(`c${at}`, [l, w, h], cents));
          const request = mugRequest(cartons, { minuteValue: 2 * CENT });
          const priced = pricedCartons(MUG, cartons, MUG_TERMS);
          const all = priced.flatMap((each) => cutDown(each, request)?.netValue ?? []);
          const best = bestCut(priced, toBeat([]), request);
          expect(best?.cut.netValue).toBe(all.length === 0 ? undefined : Math.min(...all));
          found += Number(best !== null);
        },
      ),
      { numRuns: 100, seed: 6 },
    );
    expect(found).toBeGreaterThan(30);
  });

  it("is none where nothing is under what is to be beaten", () => {
    const cube10 = carton("cube-10", [10, 10, 10], 100);
    const request = mugRequest([cube10]);
    const priced = pricedCartons(MUG, [cube10], MUG_TERMS);
    const value = bestCut(priced, toBeat([]), request)?.cut.netValue ?? 0;
    const beat = (least: number) => ({ value: least, asSpentValue: least, hasPostage: true });
    expect(bestCut(priced, beat(value + 1), request)).not.toBeNull();
    expect(bestCut(priced, beat(value), request)).toBeNull();
  });
});
