import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import type { Habits } from "#lib/packing/habits";
import { naturalAmount } from "#lib/packing/natural-amount";
import type {
  StandInCaution,
  StandInReason,
  SubstitutionRule,
  WrapJob,
} from "#lib/packing/substitution/substitution-rule";
import { amountHolding, unitArea } from "#lib/packing/unit-area";
import { unitLength } from "#lib/packing/unit-length";
import { type Amount, unitsOf } from "#lib/units/amount";

/** More choices than these are no help at the bench. */
const MOST_STAND_INS = 4;

/** A supply of the shop, with its stock; null where it was never counted. */
export type ShelfSupply = DraftSupply & { readonly onHand: Amount | null };

/**
 * A supply that can take another's place in a step: how much of it, what the parcel weighs more (below zero: less;
 * null where a mass is unknown), whether stock is enough (null if never counted), and why, in codes.
 */
export type StandIn = {
  readonly supplyId: string;
  readonly amount: Amount;
  readonly addedMg: number | null;
  readonly enough: boolean | null;
  readonly reason: StandInReason;
  readonly cautions: readonly StandInCaution[];
};

/**
 * What can stand in for a missing supply in a step: the same material in another size first, then by the rules in
 * their order; what stock is enough for before what was never counted, and that before what is short. At most four.
 *
 * @param step - job, the missing supply, and the amount that the step takes, above zero
 * @param shelf - supplies of the shop with their stock
 * @param rules - rules, better ones first
 * @param habits - bulk, overfill, manner and strip length, by which volumes and strips are converted
 * @returns at most four stand-ins, best first
 * @throws RangeError if the amount is not above zero
 * @example standIns({ job: "shock", missing: largeBubble, amount: amountOfUnits(2) }, shelf, COMMON_SUBSTITUTIONS,
 *   USUAL_HABITS)[0]?.supplyId // "small-bubble"
 */
export function standIns(
  step: { readonly job: WrapJob; readonly missing: DraftSupply; readonly amount: Amount },
  shelf: readonly ShelfSupply[],
  rules: readonly SubstitutionRule[],
  habits: Habits,
): readonly StandIn[] {
  const { job, missing, amount } = step;
  if (!(amount > 0)) throw new RangeError(`standIns requires an amount above zero, got ${amount}`);
  const fitting = [
    ...sameMaterial(job, missing),
    ...rules.filter((each) => each.job === job && each.from === missing.material),
  ];
  const found = fitting.flatMap((rule) =>
    shelf
      .filter(({ material, supplyId }) => material === rule.to && supplyId !== missing.supplyId)
      .flatMap((supply) => standIn(rule, missing, amount, supply, habits)),
  );
  const once = found.filter(
    (each, index) => found.findIndex(({ supplyId }) => supplyId === each.supplyId) === index,
  );
  return once.sort((a, b) => stockRank(a) - stockRank(b)).slice(0, MOST_STAND_INS);
}

function stockRank({ enough }: StandIn): number {
  if (enough === null) return 1;
  return enough ? 0 : 2;
}

/** The same material in another size, by what the job goes by. */
function sameMaterial(job: WrapJob, { material }: DraftSupply): readonly SubstitutionRule[] {
  const measure = job === "fill" ? "volume" : "area";
  const byLength = job === "bind" || job === "seal";
  return [
    {
      job,
      from: material,
      to: material,
      ratio: 1,
      measure: byLength ? "length" : measure,
      reason: "same-material",
      cautions: [],
      source: "the same material",
    },
  ];
}

function standIn(
  rule: SubstitutionRule,
  missing: DraftSupply,
  amount: Amount,
  supply: ShelfSupply,
  habits: Habits,
): readonly StandIn[] {
  const from = unitMeasure(rule, missing, habits);
  const to = unitMeasure(rule, supply, habits);
  if (from === null || to === null) return [];
  const taken = naturalAmount(amountHolding(unitsOf(amount) * from * rule.ratio, to), supply.useUnit);
  const { supplyId, massMg, onHand } = supply;
  const addedMg =
    massMg === null || missing.massMg === null
      ? null
      : Math.round(unitsOf(taken) * massMg - unitsOf(amount) * missing.massMg);
  const enough = onHand === null ? null : onHand >= taken;
  return [{ supplyId, amount: taken, addedMg, enough, reason: rule.reason, cautions: rule.cautions }];
}

/** What one use unit holds of what the rule goes by; null where its unit does not say. */
function unitMeasure(rule: SubstitutionRule, supply: DraftSupply, habits: Habits): number | null {
  switch (rule.measure) {
    case "area":
      return unitArea(supply);
    case "volume": {
      const fill = fillAmount(1, supply, habits, habits.fillManner);
      return fill.kind === "fill" ? fill.mlPerUnit : null;
    }
    case "length": {
      const length = unitLength(supply, habits.strips.lengthUm);
      return typeof length === "number" ? length : null;
    }
    case "count":
      return countOf(supply, habits);
    default:
      return rule.measure satisfies never;
  }
}

/** Strips or bands in one use unit. */
function countOf(supply: DraftSupply, habits: Habits): number | null {
  const length = unitLength(supply, habits.strips.lengthUm);
  if (length === "each") return 1;
  return length === null ? null : length / habits.strips.lengthUm;
}
