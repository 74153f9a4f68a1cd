import type { CandidateCarton } from "#lib/cartons/choice/candidate-carton";
import type { CutTerms } from "#lib/cartons/choice/cut-terms";
import type { CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { PackedLoad } from "#lib/cartons/cost/packed-load";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import type { Clearance } from "#lib/cartons/fit/fit-question";
import type { LoadType } from "#lib/cartons/strength/load-type";
import type { TrustedBoard } from "#lib/cartons/strength/trusted-board";
import { blockVolume } from "#lib/packing/block";

/** A load, the cartons that it may go in, and what they are judged by. */
export type ChoiceRequest = {
  readonly load: PackedLoad;
  /** left free for the cushion */
  readonly clearance: Clearance;
  /** each with an id of its own */
  readonly candidates: readonly CandidateCarton[];
  readonly terms: CartonTerms;
  readonly loadType: LoadType;
  readonly trust: TrustedBoard;
  /** what a minute of work costs in 1/10,000 minor unit; null where the seller does not count it */
  readonly minuteValue: number | null;
  readonly cut: CutTerms;
  /** a size that is not there is offered only if it saves more than so many thousandths of the best that is */
  readonly stockMarginPerMille: number;
  /** how hard to look with more than six pieces; the quick one where there are many cartons */
  readonly effort: FitEffort;
};

/** A tenth of the cost: less is not worth waiting for a delivery. A convention, no source. */
export const USUAL_STOCK_MARGIN_PER_MILLE = 100;

/** A load may be a last digit over its blocks. */
const ROUNDING = 1 + 1e-9;

/**
 * Refuses what no carton could be chosen by.
 *
 * @param request load, cartons and settings
 * @throws RangeError if two cartons have one id, the load takes more than its blocks, or a setting is not as said
 */
export function refuseWrongRequest(
  request: Pick<ChoiceRequest, "load" | "candidates" | "minuteValue" | "cut" | "stockMarginPerMille">,
): void {
  const { load, candidates, minuteValue, cut, stockMarginPerMille } = request;
  const ids = new Set<string>();
  for (const { id } of candidates) {
    if (ids.has(id)) throw new RangeError(`cartonChoices requires each carton once, got ${id} twice`);
    ids.add(id);
  }
  const blocksMl = load.pieces.reduce((sum, { block }) => sum + blockVolume(block), 0);
  if (!(load.ml >= 0 && load.ml <= blocksMl * ROUNDING && load.massMg >= 0)) {
    throw new RangeError(
      `cartonChoices requires a load of at most its blocks, ${blocksMl} ml, and a mass from zero, got ${load.ml} ml ` +
        `and ${load.massMg} mg`,
    );
  }
  if (
    !(cut.minutes > 0 && Number.isFinite(cut.minutes) && Number.isSafeInteger(cut.stepUm) && cut.stepUm > 0)
  ) {
    throw new RangeError(
      `cartonChoices requires minutes and a whole step above zero, got ${JSON.stringify(cut)}`,
    );
  }
  const settings = [minuteValue ?? 0, stockMarginPerMille];
  const wrong = settings.find((each) => !(each >= 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`cartonChoices requires settings from zero, got ${wrong}`);
}
