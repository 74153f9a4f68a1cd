import { type RecipeEvidence, recipeEvidence, singleStepFactor } from "#lib/packing/learning/recipe-evidence";
import { recipeProposals, worthwhileChange } from "#lib/packing/learning/recipe-proposals";
import { unitsOf } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { type Measurement, measurement } from "../../measurement";
import { type CardErrors, countedShelves, LATER_WEEK, type PlayedShelf } from "./counted-shelves";

const SEEDS = [1, 2, 3];
/** Shops of each seed; the more the rarer what is looked for. */
const SHOPS = { mixed: 12, none: 12, fifth: 4, "fifth-later": 4 } as const;
const PER_CENT = 100;
const FEW_COUNTS = 8;
const COUNTS = [4, 8, 12, 26];
const FIRST_DAY = day("2025-01-06");
const FIFTH = 1.2;
const WEEKS = 52;

/** Whether recipes are learned from counts: totals, single steps, changes proposed and false alarms. */
export function stepLearning(): Measurement[] {
  return [
    ...SEEDS.flatMap(factors),
    ...falseAlarms(),
    ...found("fifth", 0),
    ...found("fifth-later", LATER_WEEK),
  ];
}

function shops(seed: number, errors: CardErrors): PlayedShelf[][] {
  return Array.from({ length: SHOPS[errors] }, (_, shop) => countedShelves(100 * seed + shop, errors));
}

function evidenceAfter({ intervals, cards }: PlayedShelf, counts: number): RecipeEvidence {
  const seen = intervals.slice(0, counts);
  const holding = new Set(cards.map(({ stepKey }) => stepKey));
  return recipeEvidence(seen, seen.at(-1)?.to ?? FIRST_DAY, { holding, noes: new Map() });
}

function told(name: string, value: number, unit: string, target: number | null = null): Measurement {
  return measurement({ area: "packing", name: `recipes, ${name}`, value, unit, target });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function factors(seed: number): Measurement[] {
  const played = shops(seed, "mixed").flat();
  const totals = played.flatMap(totalAndTruth);
  const errors = totals.map(({ factor, truth }) => Math.abs(factor / truth - 1));
  return [
    told(`seed ${seed}: a supply's use after 8 counts is off by`, PER_CENT * mean(errors), "%", 5),
    told(
      `seed ${seed}: of them off by over 5 %`,
      PER_CENT * mean(errors.map((error) => Number(error > 0.05))),
      "%",
    ),
    told(
      `seed ${seed}: the cards alone are off by`,
      PER_CENT * mean(totals.map(({ truth }) => Math.abs(1 / truth - 1))),
      "%",
    ),
    ...COUNTS.flatMap((counts) => {
      const held = mean(played.flatMap((shelf) => stepsHeld(shelf, counts)));
      const name = `seed ${seed}: single steps in their 90 % interval after ${counts} counts`;
      return [
        told(name, PER_CENT * held, "%"),
        told(
          `${name}, outside of 87 to 97 by`,
          PER_CENT * Math.max(0, 0.87 - held, held - 0.97),
          "points",
          0,
        ),
      ];
    }),
  ];
}

/** What was learned of a supply's use over the first counts, and what it truly was. */
function totalAndTruth(shelf: PlayedShelf): { factor: number; truth: number }[] {
  const { total } = evidenceAfter(shelf, FEW_COUNTS);
  const sum = (values: readonly number[]) =>
    values.slice(0, FEW_COUNTS).reduce((all, value) => all + value, 0);
  const byCards = sum(shelf.cardUnits);
  return total === null || byCards === 0
    ? []
    : [{ factor: total.factor, truth: sum(shelf.realUnits) / byCards }];
}

/** 1 for each step whose true factor lies in the stated interval, else 0. */
function stepsHeld(shelf: PlayedShelf, counts: number): number[] {
  return evidenceAfter(shelf, counts).steps.flatMap((step) =>
    step.stepKeys.map((key) => {
      const { low, high } = singleStepFactor(step, key);
      const truth = shelf.factors.get(key) ?? 1;
      return Number(truth >= low && truth <= high);
    }),
  );
}

type FirstProposal = { readonly stepKeys: readonly string[]; readonly counts: number };

/** Proposals after each of a year's counts, each where it came first. */
function firstProposals(shelf: PlayedShelf): FirstProposal[] {
  const first = new Map<string, FirstProposal>();
  for (let counts = COUNTS[0] ?? 0; counts <= shelf.intervals.length; counts += 1) {
    const countDays = shelf.intervals.slice(0, counts).map(({ to }) => to);
    const ground = { unit: "sheet", cards: shelf.cards, answers: [], countDays } as const;
    for (const { stepKeys } of recipeProposals(evidenceAfter(shelf, counts), ground)) {
      const key = stepKeys.join();
      if (!first.has(key)) first.set(key, { stepKeys, counts });
    }
  }
  return [...first.values()];
}

function falseAlarms(): Measurement[] {
  const alarmed = SEEDS.flatMap((seed) => shops(seed, "none")).map((shelves) =>
    Number(shelves.some((shelf) => firstProposals(shelf).length > 0)),
  );
  return [
    told("true cards: shops that saw a proposal in a year", PER_CENT * mean(alarmed), "%", 5),
    told("true cards: shop years played", alarmed.length, "years"),
  ];
}

function found(errors: "fifth" | "fifth-later", changeWeek: number): Measurement[] {
  const when = changeWeek === 0 ? "a fifth low" : `a fifth low from week ${changeWeek} on`;
  const played = SEEDS.flatMap((seed) => shops(seed, errors).flat()).map((shelf) => ({
    shelf,
    proposals: firstProposals(shelf),
  }));
  const low = played.flatMap(({ shelf, proposals }) =>
    shelf.cards
      .filter(({ stepKey }) => shelf.factors.get(stepKey) === FIFTH)
      .map(({ stepKey, says }) => ({
        isWorth: (FIFTH - 1) * unitsOf(says) >= worthwhileChange(unitsOf(says), "sheet"),
        after: Math.min(
          ...proposals.filter(({ stepKeys }) => stepKeys.includes(stepKey)).map(({ counts }) => counts),
        ),
      })),
  );
  const wrong = played.flatMap(({ shelf, proposals }) =>
    proposals.map((proposal) => Number(isWrong(shelf, proposal, changeWeek))),
  );
  const share = (list: typeof low, counts: number): number =>
    PER_CENT * mean(list.map(({ after }) => Number(after <= changeWeek + counts)));
  const worth = low.filter(({ isWorth }) => isWorth);
  return [
    ...COUNTS.map((counts) =>
      told(`${when}: worth a change and proposed after ${counts} counts`, share(worth, counts), "%"),
    ),
    told(`${when}: all of them proposed within the year`, share(low, WEEKS - changeWeek), "%"),
    told(`${when}: proposals with less than half the change behind them`, PER_CENT * mean(wrong), "%"),
    told(`${when}: proposals in all`, wrong.length, "proposals"),
  ];
}

/** Whether the steps really took less than half of what would be worth a change, when it was proposed. */
function isWrong(shelf: PlayedShelf, { stepKeys, counts }: FirstProposal, changeWeek: number): boolean {
  const cards = new Map(shelf.cards.map(({ stepKey, says }) => [stepKey, unitsOf(says)]));
  const sum = (of: (key: string) => number) => stepKeys.reduce((all, key) => all + of(key), 0);
  const card = sum((key) => cards.get(key) ?? 0);
  const beyond = sum((key) => (cards.get(key) ?? 0) * ((shelf.factors.get(key) ?? 1) - 1));
  return counts <= changeWeek || Math.abs(beyond) < worthwhileChange(card, "sheet") / 2;
}
