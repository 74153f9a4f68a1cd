import { type Estimate, meanEstimate, shareEstimate } from "#lib/replenishment/simulation/estimate";
import { leadTimesOn } from "#lib/replenishment/simulation/lead-time-at";
import { playedRun } from "#lib/replenishment/simulation/played-run";
import type { PlayedRun, RunFigures } from "#lib/replenishment/simulation/run-figures";
import type { ShopSetting } from "#lib/replenishment/simulation/shop-setting";
import { runDraws, type ShopUse } from "#lib/replenishment/simulation/shop-use";
import type { Random } from "#lib/statistics/normal-draw";

/** Figures over all runs. */
export type RunSummary = {
  /** each figure's mean over runs */
  readonly means: Readonly<Record<keyof RunFigures, Estimate>>;
  /** share of cycles in which all use was met from stock; null where no cycle ended */
  readonly cycleService: Estimate | null;
  /** share of the use met from stock on its day; null where nothing was used */
  readonly filledShare: Estimate | null;
};

/** What a setting came to. */
export type SimulatedShop = {
  readonly runs: readonly PlayedRun[];
  readonly shop: RunSummary;
  readonly supplies: ReadonlyMap<string, RunSummary>;
};

/**
 * Plays settings of a shop side by side, each run of all of them on the same draws: what differs is the setting's
 * doing. Nothing here is a promise: it shows how ways to order would fare if use were as the forecast and its errors
 * say, each supply by itself.
 *
 * @param use what has to be met, and for how many days
 * @param settings shops that meet it; their suppliers of the same place in the list share the chance of lead times
 * @param play how many runs, from 1, and the source of chance
 * @returns one result for each setting, in their order
 * @throws RangeError when a setting or the number of runs is out of range, or a way to order breaks a supplier's terms
 * @example simulatedShops(use, [{ ...shop, policy: weekly }, { ...shop, policy: itemByItem }], { runs: 200, random })
 */
export function simulatedShops(
  use: ShopUse,
  settings: readonly ShopSetting[],
  { runs, random }: { readonly runs: number; readonly random: Random },
): SimulatedShop[] {
  if (!(Number.isSafeInteger(runs) && runs > 0)) {
    throw new RangeError(`simulatedShops requires whole runs from 1, got ${runs}`);
  }
  for (const setting of settings) checkSetting(setting, use);
  const draw = runDraws(use, Math.max(0, ...settings.map(({ suppliers }) => suppliers.length)));
  const played = settings.map((): PlayedRun[] => []);
  for (let run = 0; run < runs; run += 1) {
    const draws = draw(random);
    settings.forEach((setting, at) => {
      played[at]?.push(playedRun(use, setting, draws));
    });
  }
  return played.map((own) => ({
    runs: own,
    shop: runSummary(own.map(({ shop }) => shop)),
    supplies: new Map(
      use.supplies.map(({ supplyId }) => [
        supplyId,
        runSummary(own.flatMap(({ supplies }) => supplies.get(supplyId) ?? [])),
      ]),
    ),
  }));
}

function runSummary(runs: readonly RunFigures[]): RunSummary {
  const mean = (figure: keyof RunFigures): Estimate => meanEstimate(runs.map((run) => run[figure]));
  return {
    means: {
      cycles: mean("cycles"),
      shortCycles: mean("shortCycles"),
      need: mean("need"),
      unmet: mean("unmet"),
      daysOutOfStock: mean("daysOutOfStock"),
      orders: mean("orders"),
      deliveryCost: mean("deliveryCost"),
      goodsCost: mean("goodsCost"),
      ordered: mean("ordered"),
      meanValue: mean("meanValue"),
      peakValue: mean("peakValue"),
      meanLitres: mean("meanLitres"),
      peakLitres: mean("peakLitres"),
      endValue: mean("endValue"),
      meanOwedValue: mean("meanOwedValue"),
    },
    cycleService: rest(
      shareEstimate(runs.map(({ shortCycles, cycles }) => ({ part: shortCycles, whole: cycles }))),
    ),
    filledShare: rest(shareEstimate(runs.map(({ unmet, need }) => ({ part: unmet, whole: need })))),
  };
}

function rest(share: Estimate | null): Estimate | null {
  return share === null ? null : { ...share, mean: 1 - share.mean };
}

function checkSetting(setting: ShopSetting, use: ShopUse): void {
  const { supplies, suppliers, reviewDays, firstCheck, countedFrom } = setting;
  if (!(Number.isSafeInteger(reviewDays) && reviewDays > 0)) {
    throw new RangeError(`simulatedShops requires whole review days above 0, got ${reviewDays}`);
  }
  if (!(Number.isSafeInteger(firstCheck) && firstCheck >= 0)) {
    throw new RangeError(`simulatedShops requires a first check on a whole day from 0, got ${firstCheck}`);
  }
  if (!(Number.isSafeInteger(countedFrom) && countedFrom >= 0 && countedFrom < use.days)) {
    throw new RangeError(`simulatedShops requires figures from a day before ${use.days}, got ${countedFrom}`);
  }
  for (const { supplyId, startStock } of supplies) {
    if (!(startStock >= 0)) {
      throw new RangeError(`simulatedShops requires a start stock from 0 of ${supplyId}, got ${startStock}`);
    }
  }
  for (const supplier of suppliers) leadTimesOn(supplier, 0);
}
