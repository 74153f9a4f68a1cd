import { bestCut } from "#lib/cartons/choice/best-cut";
import { cartonStock, isToUseUp } from "#lib/cartons/choice/candidate-carton";
import { type CartonChoice, cutChoice, toBeat, wholeChoice } from "#lib/cartons/choice/carton-choice";
import { type ChoiceRequest, refuseWrongRequest } from "#lib/cartons/choice/choice-request";
import { cutDown } from "#lib/cartons/choice/cut-down";
import { type FitBook, fitBook } from "#lib/cartons/choice/fit-book";
import { firstHeld, type HeldLoad, type HoldingQuestion } from "#lib/cartons/choice/held-load";
import { type LeftOutCarton, mostTelling } from "#lib/cartons/choice/left-out";
import {
  byAsSpent,
  byTotal,
  hasPostage,
  type PricedCarton,
  pricedCartons,
} from "#lib/cartons/choice/priced-carton";
import { blockVolume } from "#lib/packing/block";

/** At most three answers, each with a carton of its own, and the most telling of what is not offered. */
export type CartonChoices = {
  readonly answers: readonly CartonChoice[];
  readonly leftOut: readonly LeftOutCarton[];
};

const MOST_ANSWERS = 3;
const PER_MILLE = 1_000;

/**
 * Which carton to take for a load: the cheapest in all that is there (carton, fill, tape and postage); the cheapest of what
 * is to be used up, its own price taken as spent; one that is cheaper than both when cut down; and one that is not there,
 * where it saves more than the margin or nothing that is there holds the load. What is better than the others in nothing is
 * not offered. Where postage is known for some cartons only, those without are not offered.
 *
 * Costs do not hang on how the pieces stand, so cartons are sorted by what they cost and fits are searched until one holds.
 * An estimate: it does not certify that the contents are protected, and the carrier's own rules decide.
 *
 * @param request load, clearance, cartons, terms and settings
 * @returns answers, what is there first, and a few cartons that are left out with their reasons
 * @throws RangeError if the request is not as said, or as `cartonCost`, `cartonFit` and `outerCarton`
 * @example cartonChoices(request).answers[0]?.carton.id // "8-cube"
 */
export function cartonChoices(request: ChoiceRequest): CartonChoices {
  refuseWrongRequest(request);
  const { load, clearance, candidates, terms, effort } = request;
  const fitIn = fitBook({ pieces: load.pieces, clearance, effort });
  const question = { fitIn, use: { type: request.loadType, trust: request.trust } };
  const priced = pricedCartons(load, candidates, terms).toSorted(byTotal);
  const there = priced.filter(({ carton }) => cartonStock(carton.onHand) !== "none");

  const { held: cheapest, before } = firstHeld(there, question);
  const comparable = there.filter((each) => cheapest === null || hasPostage(each) === hasPostage(cheapest));
  const toUseUp = comparable.filter(({ carton }) => isToUseUp(carton)).toSorted(byAsSpent);
  const whole = answersAsTheyAre(cheapest, firstHeld(toUseUp, question).held, request);
  const others = there.filter(({ carton }) => whole.every((answer) => answer.carton.id !== carton.id));
  const cut = bestCut(others, toBeat(whole), request);
  const gone = goneCarton(priced, cheapest, question, request.stockMarginPerMille);

  const answers = [...whole, ...(cut ? [cutChoice(cut.priced, cut.cut, cheapest)] : []), ...gone.answers];
  const refused = before.filter(({ reason }) => reason.kind !== "doesNotFit");
  const leftOut = cheapest
    ? [...refused, ...withoutPostage(there, cheapest, question), ...gone.leftOut]
    : [...refused, ...gone.leftOut, ...tooSmall(request, fitIn)];
  return { answers: answers.slice(0, MOST_ANSWERS), leftOut: mostTelling(leftOut) };
}

function answersAsTheyAre(cheapest: HeldLoad | null, toUseUp: HeldLoad | null, request: ChoiceRequest) {
  if (cheapest === null) return [];
  const first = wholeChoice("cheapest", cheapest, null, cutDown(cheapest, request));
  if (toUseUp === null || toUseUp.carton.id === cheapest.carton.id) return [first];
  return [first, wholeChoice("toUseUp", toUseUp, cheapest, cutDown(toUseUp, request))];
}

/** The cheapest that is not there and would cost less: an answer where it saves more than the margin, else a word. */
function goneCarton(
  priced: readonly PricedCarton[],
  cheapest: HeldLoad | null,
  question: HoldingQuestion,
  marginPerMille: number,
): CartonChoices {
  const gone = priced.filter(
    (each) =>
      cartonStock(each.carton.onHand) === "none" && (cheapest === null || isCheaper(each, cheapest, true)),
  );
  const { held, before } = firstHeld(gone, question);
  if (held === null) return { answers: [], leftOut: before.filter(({ reason }) => reason.kind === "over") };
  const offer = { answers: [wholeChoice("notOnHand", held, cheapest, null)], leftOut: [] };
  if (cheapest === null) return offer;
  const savesValue = cheapest.cost.totalValue - held.cost.totalValue;
  if (savesValue * PER_MILLE > cheapest.cost.totalValue * marginPerMille) return offer;
  return {
    answers: [],
    leftOut: [{ cartonId: held.carton.id, reason: { kind: "notOnHand", savesValue } }],
  };
}

/** One that holds the load and would cost less in materials, but for which no postage is known. */
function withoutPostage(
  there: readonly PricedCarton[],
  cheapest: HeldLoad,
  question: HoldingQuestion,
): readonly LeftOutCarton[] {
  if (!hasPostage(cheapest)) return [];
  const { held } = firstHeld(
    there.filter((each) => isCheaper(each, cheapest, false)),
    question,
  );
  return held === null ? [] : [{ cartonId: held.carton.id, reason: { kind: "noPostage" } }];
}

/** Whether a carton costs less, with a postage known as for the other or, as asked, with none. */
function isCheaper(each: PricedCarton, than: PricedCarton, isLike: boolean): boolean {
  return (hasPostage(each) === hasPostage(than)) === isLike && each.cost.totalValue < than.cost.totalValue;
}

/** What the load does not fit, the largest first; for a load that nothing holds. */
function tooSmall({ candidates }: ChoiceRequest, fitIn: FitBook): readonly LeftOutCarton[] {
  const largestFirst = candidates.toSorted((a, b) => blockVolume(b.inside) - blockVolume(a.inside));
  return largestFirst.flatMap(({ id, inside }) => {
    const fit = fitIn(inside);
    return fit.kind === "does-not-fit"
      ? [{ cartonId: id, reason: { kind: "doesNotFit" as const, reason: fit.reason } }]
      : [];
  });
}
