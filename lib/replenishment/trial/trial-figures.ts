import { type Estimate, meanEstimate, shareEstimate } from "#lib/replenishment/simulation/estimate";
import type { RunFigures } from "#lib/replenishment/simulation/run-figures";

/** What a setting came to over the whole span, of a supply or of the shop; of a difference, the one less the other. */
export type TrialFigures = {
  /** days on which a need was not met in full; of the shop: added up over supplies */
  readonly daysOut: Estimate;
  /** of a supply: order lines; of the shop: orders */
  readonly orders: Estimate;
  readonly deliveryCost: Estimate;
  readonly goodsCost: Estimate;
  /** what was paid for goods beyond their usual price; below 0 where larger orders made them cheaper */
  readonly priceGap: Estimate;
  /** money tied up in stock at the end of a day */
  readonly meanValue: Estimate;
  readonly peakValue: Estimate;
  readonly meanLitres: Estimate;
  /** delivery, order work, keeping stock and the price gap: all that a setting can change of what packing costs */
  readonly cost: Estimate;
  /** share of order cycles without a shortage; null where none ended */
  readonly cycleService: Estimate | null;
  /** share of the need met from stock on its day; null where nothing was needed */
  readonly filledShare: Estimate | null;
};

/** What turns a run into money. */
export type TrialCosts = {
  /** price of a unit that the setting is not to answer for; 1 for the shop, whose amounts are at value already */
  readonly unitValue: number;
  /** of keeping stock over the whole span, as a share of its value */
  readonly keepingShare: number;
  /** beside delivery, for each order */
  readonly orderCost: number;
};

type Measure = (run: RunFigures, costs: TrialCosts) => number;
type MeasureName = Exclude<keyof TrialFigures, "cycleService" | "filledShare">;

const priceGap: Measure = ({ goodsCost, ordered }, { unitValue }) => goodsCost - ordered * unitValue;

const MEASURES: Readonly<Record<MeasureName, Measure>> = {
  daysOut: ({ daysOutOfStock }) => daysOutOfStock,
  orders: ({ orders }) => orders,
  deliveryCost: ({ deliveryCost }) => deliveryCost,
  goodsCost: ({ goodsCost }) => goodsCost,
  priceGap,
  meanValue: ({ meanValue }) => meanValue,
  peakValue: ({ peakValue }) => peakValue,
  meanLitres: ({ meanLitres }) => meanLitres,
  cost: (run, costs) =>
    run.deliveryCost +
    run.orders * costs.orderCost +
    run.meanValue * costs.keepingShare +
    priceGap(run, costs),
};

const MISSED = {
  cycleService: ({ shortCycles, cycles }: RunFigures) => ({ part: shortCycles, whole: cycles }),
  filledShare: ({ unmet, need }: RunFigures) => ({ part: unmet, whole: need }),
} as const;

/**
 * Figures over all runs of a setting.
 *
 * @param runs at least one
 * @param costs what turns them into money
 * @throws RangeError when there is no run
 */
export function trialFigures(runs: readonly RunFigures[], costs: TrialCosts): TrialFigures {
  return {
    ...measured((name) => meanEstimate(runs.map((run) => MEASURES[name](run, costs)))),
    cycleService: metShare(runs.map(MISSED.cycleService)),
    filledShare: metShare(runs.map(MISSED.filledShare)),
  };
}

/**
 * The tried setting less the present one, run by run: both had the same luck, so that the difference is surer than
 * either of them.
 *
 * @param present runs of the present setting
 * @param tried runs on the same draws, in the same order
 * @param costs what turns them into money
 * @throws RangeError when there is no run
 */
export function trialDifference(
  present: readonly RunFigures[],
  tried: readonly RunFigures[],
  costs: TrialCosts,
): TrialFigures {
  const pairs = present.flatMap((before, at) => {
    const after = tried[at];
    return after === undefined ? [] : [{ before, after }];
  });
  return {
    ...measured((name) =>
      meanEstimate(
        pairs.map(({ before, after }) => MEASURES[name](after, costs) - MEASURES[name](before, costs)),
      ),
    ),
    cycleService: shareDifference(present.map(MISSED.cycleService), tried.map(MISSED.cycleService)),
    filledShare: shareDifference(present.map(MISSED.filledShare), tried.map(MISSED.filledShare)),
  };
}

function measured(estimate: (name: MeasureName) => Estimate): Record<MeasureName, Estimate> {
  return {
    daysOut: estimate("daysOut"),
    orders: estimate("orders"),
    deliveryCost: estimate("deliveryCost"),
    goodsCost: estimate("goodsCost"),
    priceGap: estimate("priceGap"),
    meanValue: estimate("meanValue"),
    peakValue: estimate("peakValue"),
    meanLitres: estimate("meanLitres"),
    cost: estimate("cost"),
  };
}

type Missed = { readonly part: number; readonly whole: number };

function metShare(missed: readonly Missed[]): Estimate | null {
  const share = shareEstimate(missed);
  return share === null ? null : { ...share, mean: 1 - share.mean };
}

/** Error of two ratios on the same draws: that of the difference of their residuals (Cochran 1977, from memory). */
function shareDifference(present: readonly Missed[], tried: readonly Missed[]): Estimate | null {
  const before = residuals(present);
  const after = residuals(tried);
  if (before === null || after === null) return null;
  const { standardError } = meanEstimate(after.own.map((each, at) => each - (before.own[at] ?? 0)));
  return { mean: before.share - after.share, standardError };
}

function residuals(missed: readonly Missed[]): { share: number; own: number[] } | null {
  const share = shareEstimate(missed)?.mean ?? null;
  if (share === null) return null;
  const usual = missed.reduce((sum, { whole }) => sum + whole, 0) / missed.length;
  return { share, own: missed.map(({ part, whole }) => (part - share * whole) / usual) };
}
