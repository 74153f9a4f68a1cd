import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CandidateCarton, isToUseUp } from "#lib/cartons/choice/candidate-carton";
import { cartonChoices } from "#lib/cartons/choice/carton-choices";
import type { ChoiceRequest } from "#lib/cartons/choice/choice-request";
import { type CartonCost, cartonCost } from "#lib/cartons/cost/carton-cost";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { outerCarton } from "#lib/cartons/strength/outer-carton";
import { blockVolume } from "#lib/packing/block";
import { milligrams } from "#lib/units/mass";
import { CENT, carton, IN, inches, MUG_TERMS, mugRequest } from "./mug-bench";

const side = (from: number, to: number) => fc.integer({ min: from, max: to });
const board = fc.constantFrom<CandidateCarton["rating"]>(
  { kind: "edgeCrush", wall: "single", poundsPerInch: 32 },
  { kind: "burst", wall: "single", psi: 125 },
  { kind: "unrated" },
);
const shelf = fc
  .array(
    fc.record({
      sides: fc.tuple(side(4, 16), side(4, 16), side(4, 16)),
      cents: side(0, 300),
      more: fc.record({
        rating: board,
        onHand: fc.constantFrom(null, 0, 3),
        ageing: fc.constantFrom<CandidateCarton["ageing"]>("moves", "sits"),
        useFirst: fc.boolean(),
        condition: fc.constantFrom<CandidateCarton["condition"]>("new", "reused"),
      }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((drawn) => drawn.map(({ sides, cents, more }, at) => carton(`c${at}`, sides, cents, more)));
const loads = fc
  .array(fc.record({ sides: fc.tuple(side(2, 7), side(2, 7), side(2, 7)), upright: fc.boolean() }), {
    minLength: 1,
    maxLength: 4,
  })
  .map((drawn) => {
    const pieces = drawn.map(({ sides, upright }) => ({ block: inches(...sides), upright }));
    const ml = pieces.reduce((sum, { block }) => sum + blockVolume(block), 0);
    return { pieces, ml: ml * 0.8, massMg: 400_000 * pieces.length };
  });
/** A step each pound, and none above 12 lb. */
const byPound = (massMg: number): number | null =>
  massMg > 12 * 453_592 ? null : 500 + 60 * Math.ceil(massMg / 453_592);
const requests: fc.Arbitrary<ChoiceRequest> = fc
  .record({
    candidates: shelf,
    load: loads,
    clearanceIn: side(0, 2),
    minuteCents: fc.constantFrom(null, 0, 5, 40),
  })
  .map(({ candidates, load, clearanceIn, minuteCents }) => {
    const um = clearanceIn * IN;
    return mugRequest(candidates, {
      load,
      clearance: { wallsUm: um, baseUm: um, topUm: um },
      minuteValue: minuteCents === null ? null : minuteCents * CENT,
      terms: { ...MUG_TERMS, postage: byPound },
    });
  });

/** What is there and holds the load, asked one by one without the search's own order. */
function held({ candidates, load, clearance, terms, effort, loadType }: ChoiceRequest): CartonCost[] {
  return candidates.flatMap((each) => {
    const fits = cartonFit({ pieces: load.pieces, inside: each.inside, clearance }, effort).kind === "fits";
    if (!fits || each.onHand === 0) return [];
    const cost = cartonCost(load, each, terms);
    const gross = { grossMg: milligrams(Math.round(cost.massMg)), outsideUm: cost.size.um };
    const verdict = outerCarton(each.rating, gross, { type: loadType, condition: each.condition });
    return verdict.kind === "carries" ? [cost] : [];
  });
}
const cheapestOf = (request: ChoiceRequest) =>
  cartonChoices(request).answers.find(({ why }) => why === "cheapest");

describe("carton choices, whatever the shelf", () => {
  it("have a cheapest that costs no more than any carton that is there and holds the load", () => {
    let answered = 0;
    fc.assert(
      fc.property(requests, (request) => {
        const all = held(request);
        const sent = all.filter(({ postageValue }) => postageValue !== null);
        const counted = sent.length > 0 ? sent : all;
        const cheapest = cheapestOf(request);
        expect(cheapest?.cost.totalValue).toBe(
          counted.length === 0 ? undefined : Math.min(...counted.map(({ totalValue }) => totalValue)),
        );
        answered += Number(cheapest !== undefined);
      }),
      { numRuns: 150, seed: 7 },
    );
    expect(answered).toBeGreaterThan(50);
  });

  it("never have a dearer cheapest where the shelf has one carton more", () => {
    fc.assert(
      fc.property(requests, (request) => {
        const more = cheapestOf(request);
        const less = cheapestOf({ ...request, candidates: request.candidates.slice(1) });
        fc.pre(less !== undefined && less.cost.postageValue !== null);
        expect(more?.cost.totalValue).toBeLessThanOrEqual(less?.cost.totalValue ?? 0);
      }),
      { numRuns: 60, seed: 8 },
    );
  });

  it("are at most three, no carton twice, each better than the cheapest in something", () => {
    fc.assert(
      fc.property(requests, (request) => {
        const { answers } = cartonChoices(request);
        expect(answers.length).toBeLessThanOrEqual(3);
        expect(new Set(answers.map(({ carton: each }) => each.id)).size).toBe(answers.length);
        for (const { more, carton: each, total } of answers.filter((answer) => answer.more !== null)) {
          const isBetter = (more?.value ?? 0) < 0 || (more?.asSpentValue ?? 0) < 0 || isToUseUp(each);
          expect(isBetter).toBe(true);
          expect(total.value - total.asSpentValue).toBe(isToUseUp(each) ? each.value : 0);
        }
      }),
      { numRuns: 300, seed: 9 },
    );
  });

  it("cut a carton only to a height at which the placement passes the checker, and where it saves", () => {
    let cuts = 0;
    fc.assert(
      fc.property(requests, (request) => {
        for (const { cut, carton: each, cost } of cartonChoices(request).answers) {
          if (cut === null) continue;
          cuts++;
          const { pieces } = request.load;
          const at = (heightUm: number) => ({
            pieces,
            clearance: request.clearance,
            inside: { ...each.inside, heightUm },
          });
          expect(placementFaults(at(cut.heightUm), cut.placement)).toEqual([]);
          expect(cut.heightUm).toBeLessThan(each.inside.heightUm);
          expect(cartonFit(at(cut.heightUm - request.cut.stepUm), request.effort).kind).toBe("does-not-fit");
          expect(cut.savesValue).toBeGreaterThan(0);
          expect(cut.cost.massMg).toBeLessThan(cost.massMg);
          if (cost.postageValue !== null) {
            expect(cut.savesValue).toBeCloseTo(cost.totalValue - cut.netValue, 3);
          }
        }
      }),
      { numRuns: 300, seed: 10 },
    );
    expect(cuts).toBeGreaterThan(50);
  });
});
