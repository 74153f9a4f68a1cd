import { playedRun } from "#lib/replenishment/simulation/played-run";
import type { PlayedRun, RunFigures } from "#lib/replenishment/simulation/run-figures";
import { runDraws, type ShopUse } from "#lib/replenishment/simulation/shop-use";
import { bestPossible, type LevelCost } from "#lib/replenishment/trial/best-possible";
import { type LeftOut, type PlayedSupply, playedSupplies } from "#lib/replenishment/trial/played-supplies";
import {
  type TrialCosts,
  type TrialFigures,
  trialDifference,
  trialFigures,
} from "#lib/replenishment/trial/trial-figures";
import {
  type ReadySupply,
  readySupply,
  startingSupply,
  trialSetting,
} from "#lib/replenishment/trial/trial-setting";
import type { TrialShop, TrialSpan, TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { type TrialVerdict, trialVerdict } from "#lib/replenishment/trial/trial-verdict";
import type { Random } from "#lib/statistics/normal-draw";

const DAYS_A_YEAR = 365;

/** Figures of both settings, and the tried less the present. */
export type Compared = {
  readonly present: TrialFigures;
  readonly tried: TrialFigures;
  readonly difference: TrialFigures;
};

/** A supply in both settings. */
export type ComparedSupply = Compared & {
  readonly supplyId: string;
  readonly name: string;
  readonly hasOwnGoal: boolean;
  /** whether the room that its pack takes is known */
  readonly hasRoom: boolean;
  /** against the best levels there are; null where these cannot be told */
  readonly best: { readonly present: LevelCost; readonly tried: LevelCost } | null;
};

/** What a trial came to. */
export type TrialResult = {
  readonly span: TrialSpan;
  readonly runs: number;
  readonly shop: Compared;
  readonly supplies: readonly ComparedSupply[];
  readonly leftOut: readonly LeftOut[];
  readonly verdict: TrialVerdict;
};

/** What a trial is asked. */
export type TrialQuestion = {
  readonly span: TrialSpan;
  readonly present: TrialTerms;
  readonly tried: TrialTerms;
  /** from 1 */
  readonly runs: number;
  readonly random: Random;
};

/**
 * Plays a shop's present terms and others side by side, on the same use and the same luck with deliveries. In steps, so
 * that the caller can do other things between them; each is some milliseconds of work.
 *
 * @param shop the shop
 * @param question the span, both terms, the runs and the source of chance
 * @returns a generator of the share that is done, from 0 to 1, which ends in the result, null where no supply can be
 * played
 * @throws RangeError when a term or the number of runs is out of range
 * @see `simulatedShops`, which plays the like at one go
 */
export function* trialSteps(
  shop: TrialShop,
  question: TrialQuestion,
): Generator<number, TrialResult | null, undefined> {
  const { span, present, tried, runs, random } = question;
  checkQuestion(question);
  const { played, leftOut } = playedSupplies(shop, span);
  if (played.length === 0) return null;
  const pairs: Pair[] = [];
  const steps = played.length + runs;
  for (const supply of played) {
    pairs.push(pairOf(supply, { present, tried, span, shop }));
    yield pairs.length / steps;
  }
  const supplies = pairs.map((pair) => startingSupply(pair.present));
  const frame = { supplies, span, shop };
  const use: ShopUse = {
    firstDay: span.firstDay,
    days: span.days,
    calendar: shop.calendar,
    supplies: played,
  };
  const settings = {
    present: trialSetting(
      pairs.map((pair) => pair.present),
      { ...frame, terms: present },
    ),
    tried: trialSetting(
      pairs.map((pair) => pair.tried),
      { ...frame, terms: tried },
    ),
  };
  const draw = runDraws(use, shop.suppliers.length);
  const done: Done = { present: [], tried: [] };
  while (done.present.length < runs) {
    const draws = draw(random);
    done.present.push(playedRun(use, settings.present, draws));
    done.tried.push(playedRun(use, settings.tried, draws));
    yield (pairs.length + done.present.length) / steps;
  }
  const keepingShare = (shop.holdingShare * span.days) / DAYS_A_YEAR;
  const costs = { unitValue: 1, keepingShare, orderCost: shop.orderCost };
  const whole = compared(done, (run) => run.shop, costs);
  const outcomes: ComparedSupply[] = [];
  for (const [at, pair] of pairs.entries()) {
    const unitValue = supplies[at]?.unitValue ?? 0;
    const own = compared(done, (run) => figuresOf(run, pair), { ...costs, unitValue });
    outcomes.push(comparedSupply(pair, own, { ...question, unitValue, shop }));
    yield 1;
  }
  return { span, runs, shop: whole, supplies: outcomes, leftOut, verdict: trialVerdict(whole.difference) };
}

function checkQuestion({ present, tried, runs }: TrialQuestion): void {
  for (const [name, value] of Object.entries({
    runs,
    "present review days": present.reviewDays,
    "review days to try": tried.reviewDays,
  })) {
    if (!(Number.isSafeInteger(value) && value > 0)) {
      throw new RangeError(`trialSteps requires whole ${name} from 1, got ${value}`);
    }
  }
}

/** A supply under both terms. */
type Pair = { readonly present: ReadySupply; readonly tried: ReadySupply };

type Done = { readonly present: PlayedRun[]; readonly tried: PlayedRun[] };

function pairOf(
  supply: PlayedSupply,
  {
    present,
    tried,
    ...rest
  }: Pick<TrialQuestion, "present" | "tried" | "span"> & { readonly shop: TrialShop },
): Pair {
  return {
    present: readySupply(supply, { ...rest, terms: present }),
    tried: readySupply(supply, { ...rest, terms: tried }),
  };
}

function figuresOf(run: PlayedRun, { present: { supply } }: Pair): RunFigures {
  const found = run.supplies.get(supply.supplyId);
  if (found === undefined)
    throw new RangeError(`trialSteps requires figures of ${supply.supplyId}, got none`);
  return found;
}

function compared(done: Done, of: (run: PlayedRun) => RunFigures, costs: TrialCosts): Compared {
  const [present, tried] = [done.present.map(of), done.tried.map(of)];
  return {
    present: trialFigures(present, costs),
    tried: trialFigures(tried, costs),
    difference: trialDifference(present, tried, costs),
  };
}

function comparedSupply(
  pair: Pair,
  figures: Compared,
  question: Pick<TrialQuestion, "present" | "tried" | "span"> & {
    readonly shop: TrialShop;
    readonly unitValue: number;
  },
): ComparedSupply {
  const { supply, order, levels } = pair.present;
  const { orders, deliveryCost } = figures.present;
  const lineCost = orders.mean > 0 ? question.shop.orderCost + deliveryCost.mean / orders.mean : 0;
  const frame = { ...question, cycleLevel: levels.cycleLevel, lineCost };
  const isComing = question.span.kind === "coming";
  const present = isComing ? bestPossible(pair.present, { ...frame, terms: question.present }) : null;
  const tried = isComing ? bestPossible(pair.tried, { ...frame, terms: question.tried }) : null;
  return {
    ...figures,
    supplyId: supply.supplyId,
    name: supply.name,
    hasOwnGoal: supply.goal !== null,
    hasRoom: order.offer.volumeMl !== null,
    best: present === null || tried === null ? null : { present, tried },
  };
}
