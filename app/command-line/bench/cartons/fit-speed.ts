import { type CartonFit, cartonFit } from "#lib/cartons/fit/carton-fit";
import { QUICK_EFFORT, USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import { placementHolds } from "#lib/cartons/fit/placement-holds";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { cutSet, pinwheelSet } from "./cut-set";
import { CARTON_SIZES_IN, cartonInside, wrappedQuestion, wrappedSet } from "./wrapped-set";

const AREA = "cartons";
const PER_CENT = 100;
const QUESTIONS = 300;
const SETS = 60;
const CHOICES = 30;
const CHOICE_PIECES = 8;
/** Milliseconds that a person does not notice. */
const ANSWER_MS = 100;
const CHOICE_MS = 500;
const CUT_ANSWER_MS = 500;
/** Share of cut sets that may be missed at 80 % fill. */
const MOST_MISSED = 5;

/** Whether wrapped pieces fit a carton: how fast, how often it stays open, how many full cartons are found. */
export function fitSpeed(): Measurement[] {
  return [
    ...[1, 2, 3, 4, 5, 6].flatMap((count) => answers(count, ANSWER_MS)),
    ...[7, 8, 9, 10].flatMap((count) => answers(count, null)),
    ...[0.8, 0.9, 1].flatMap((fill) => [6, 8, 10].flatMap((count) => cutSets(fill, count))),
    ...[0.8, 0.9, 1].flatMap((fill) => [6, 8, 10].flatMap((count) => pinwheels(fill, count))),
    ...choices(),
  ];
}

/** Yes and no mixed; up to six pieces none may stay open. */
function answers(count: number, targetMs: number | null): Measurement[] {
  const timed = Array.from({ length: QUESTIONS }, (_, at) =>
    timedFit(wrappedQuestion(QUESTIONS * count + at, count)),
  );
  const times = timed.map(({ ms }) => ms);
  const share = (kind: CartonFit["kind"]): number =>
    (PER_CENT * timed.filter(({ fit }) => fit.kind === kind).length) / QUESTIONS;
  const named = (name: string) => `${count} wrapped ${count === 1 ? "piece" : "pieces"}, ${name}`;
  const row = { area: AREA, unit: "ms" };
  return [
    measurement({ ...row, name: named("median"), value: nearestRank(times, 0.5), target: null }),
    measurement({ ...row, name: named("95 of 100"), value: nearestRank(times, 0.95), target: targetMs }),
    measurement({ ...row, name: named("worst"), value: Math.max(...times), target: null }),
    measurement({ ...row, name: named("fits"), value: share("fits"), unit: "%", target: null }),
    measurement({
      ...row,
      name: named("not proven"),
      value: share("not-proven"),
      unit: "%",
      target: targetMs === null ? null : 0,
    }),
  ];
}

/** Boxes cut straight through, whose pieces surely fit. */
function cutSets(fill: number, count: number): Measurement[] {
  const sets = Array.from({ length: SETS }, (_, at) => cutSet(SETS * count + at, count, fill));
  const isHeld = fill === 0.8;
  return knownToFit(sets, `${count} pieces cut from a box, ${fill * PER_CENT} % fill`, isHeld);
}

/** Boxes through which no straight cut goes: what the plan of straight cuts cannot find. */
function pinwheels(fill: number, count: number): Measurement[] {
  const sets = Array.from({ length: SETS }, (_, at) => pinwheelSet(SETS * count + at, count, fill));
  return knownToFit(sets, `${count} pieces of a pinwheel, ${fill * PER_CENT} % fill`, false);
}

function knownToFit(sets: readonly FitQuestion[], name: string, isHeld: boolean): Measurement[] {
  const timed = sets.map(timedFit);
  const missed = timed.filter(({ fit }) => fit.kind !== "fits").length;
  const times = timed.map(({ ms }) => ms);
  return [
    measurement({
      area: AREA,
      name: `${name}, not found`,
      value: (PER_CENT * missed) / sets.length,
      unit: "%",
      target: isHeld ? MOST_MISSED : null,
    }),
    measurement({
      area: AREA,
      name: `${name}, 95 of 100`,
      value: nearestRank(times, 0.95),
      unit: "ms",
      target: isHeld ? CUT_ANSWER_MS : null,
    }),
  ];
}

/** The smallest of fifty cartons. */
function choices(): Measurement[] {
  const times = Array.from({ length: CHOICES }, (_, at) => {
    const set = wrappedSet(at, CHOICE_PIECES);
    const began = performance.now();
    smallestCarton(set);
    return performance.now() - began;
  });
  const row = { area: AREA, unit: "ms", target: CHOICE_MS };
  const name = `smallest of ${CARTON_SIZES_IN.length} cartons for ${CHOICE_PIECES} pieces`;
  return [
    measurement({ ...row, name: `${name}, median`, value: nearestRank(times, 0.5) }),
    measurement({ ...row, name: `${name}, 95 of 100`, value: nearestRank(times, 0.95) }),
    measurement({ ...row, name: `${name}, worst`, value: Math.max(...times), target: null }),
  ];
}

/** A quick look from the smallest up finds one that surely fits; only what stayed open below is looked at again. */
function smallestCarton(set: Omit<FitQuestion, "inside">): FitQuestion["inside"] | null {
  const cartons = CARTON_SIZES_IN.map(cartonInside).toSorted((a, b) => volumeOf(a) - volumeOf(b));
  const open: FitQuestion["inside"][] = [];
  for (const inside of cartons) {
    const fit = cartonFit({ ...set, inside }, QUICK_EFFORT);
    if (fit.kind === "not-proven") open.push(inside);
    if (fit.kind === "fits")
      return open.find((smaller) => fitsAfterAll({ ...set, inside: smaller })) ?? inside;
  }
  return open.find((inside) => fitsAfterAll({ ...set, inside })) ?? null;
}

function fitsAfterAll(question: FitQuestion): boolean {
  const fit = cartonFit(question, USUAL_EFFORT);
  return fit.kind === "fits" && placementHolds(question, fit.placement);
}

const volumeOf = ({ lengthUm, widthUm, heightUm }: FitQuestion["inside"]): number =>
  lengthUm * widthUm * heightUm;

function timedFit(question: FitQuestion): { readonly fit: CartonFit; readonly ms: number } {
  const began = performance.now();
  const fit = cartonFit(question, USUAL_EFFORT);
  return { fit, ms: performance.now() - began };
}
