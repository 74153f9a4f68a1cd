import { nanogramsOf } from "#lib/postage/exact-mass";
import { priceFaults } from "#lib/postage/price-faults";
import type { RateBand, RateCard, WeightStep } from "#lib/postage/rate-card";
import { cardError, faultsOf, partOf, type RateCardFault } from "#lib/postage/rate-card-fault";
import { compareRatios } from "#lib/postage/ratio";
import { measureWords, type TypedMeasure } from "#lib/postage/typed-measure";

/**
 * Faults of one band: steps, prices, what holds beyond the last step, and walls.
 *
 * @param card with its zones
 * @param band of the card
 * @param bandAt its place on the card
 */
export function bandFaults(
  { zones }: Pick<RateCard, "zones">,
  band: RateBand,
  bandAt: number,
): RateCardFault[] {
  const named = (words: string): string => (band.name === "" ? words : `${band.name}, ${words}`);
  const part = partOf("band", bandAt);
  if (band.steps.length === 0) {
    const message = `${band.name === "" ? "The card" : band.name} has no weight step. Add at least one.`;
    return faultsOf(part, [cardError(message)]);
  }
  return [
    ...band.steps.flatMap((step, at) =>
      faultsOf(partOf("step", bandAt, at), stepFaults(zones, step, band.steps[at - 1], named)),
    ),
    ...faultsOf(partOf("further", bandAt), beyondFaults(zones, band, named)),
    ...faultsOf(part, wallFaults(band, named)),
  ];
}

type Named = (words: string) => string;

function stepFaults(
  zones: readonly string[],
  step: WeightStep,
  before: WeightStep | undefined,
  named: Named,
): RateCardFault[] {
  const row = named(`up to ${measureWords(step.upTo)}`);
  const faults = priceFaults(row, zones, step.prices);
  if (step.upTo.value.numerator <= 0n) {
    faults.unshift(
      cardError(`${row}: a weight step must be above zero. Type the weight up to which it holds.`),
    );
  }
  if (before === undefined) return faults;
  if (compareRatios(nanogramsOf(step.upTo), nanogramsOf(before.upTo)) <= 0) {
    const above = measureWords(before.upTo);
    faults.push(
      cardError(`${row}: it is not heavier than the step before, ${above}. Mend it or sort the steps.`),
    );
  }
  return [...faults, ...fallFaults(zones, step, before, row)];
}

/** Heavier and cheaper is unusual but can stand in a carrier's list. */
function fallFaults(
  zones: readonly string[],
  step: WeightStep,
  before: WeightStep,
  row: string,
): RateCardFault[] {
  return zones.flatMap((zone, at): RateCardFault[] => {
    const [lower, price] = [before.prices[at] ?? null, step.prices[at] ?? null];
    if (lower === null || price === null || price >= lower) return [];
    const message = `${row}, zone ${zone}: it costs less than up to ${measureWords(before.upTo)}. Look at both prices; if the list says so, leave them.`;
    return [{ severity: "warning", message }];
  });
}

function beyondFaults(zones: readonly string[], { beyond }: RateBand, named: Named): RateCardFault[] {
  if (beyond.kind === "notCarried") return [];
  const row = named(`each further ${measureWords(beyond.each)}`);
  const faults = priceFaults(row, zones, beyond.prices);
  if (beyond.each.value.numerator > 0n) return faults;
  return [
    cardError(`${row}: the further unit must be above zero. Type it, or say that it is not carried.`),
    ...faults,
  ];
}

function wallFaults({ walls, steps }: RateBand, named: Named): RateCardFault[] {
  const limits: readonly (readonly [string, TypedMeasure<string> | null])[] = [
    ["longest side", walls.longest],
    ["length and girth", walls.lengthAndGirth],
    ...(walls.sides ?? []).map((side) => ["sides", side] as const),
    ["weight", walls.weight],
  ];
  const faults = limits.flatMap(([name, limit]) =>
    limit !== null && limit.value.numerator <= 0n
      ? [cardError(`${named(`most ${name}`)}: a limit must be above zero. Type it or leave it empty.`)]
      : [],
  );
  const { weight } = walls;
  const lost = weight === null ? undefined : steps.find((_, at) => isBeyond(steps[at - 1], weight));
  if (lost === undefined || weight === null) return faults;
  const message = `${named(`up to ${measureWords(lost.upTo)}`)}: no parcel reaches it by its weight, as at most ${measureWords(weight)} is taken. Look at both; a weight by size may still reach it.`;
  return [...faults, { severity: "warning", message }];
}

/** A step is of no use when the one before takes all that the limit lets through. */
function isBeyond(before: WeightStep | undefined, weight: NonNullable<RateBand["walls"]["weight"]>): boolean {
  return before !== undefined && compareRatios(nanogramsOf(before.upTo), nanogramsOf(weight)) >= 0;
}
