import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import type { Habits } from "#lib/packing/habits";
import type { ChosenSupplies, SupplyJob } from "#lib/packing/recipe/chosen-supplies";
import { padThickness } from "#lib/packing/recipe/guard-steps";
import { unitArea } from "#lib/packing/unit-area";
import { unitLength } from "#lib/packing/unit-length";

/** A supply that cannot do the job it was chosen for, as it is described. */
export type UnsuitedSupply = { readonly job: SupplyJob; readonly supplyId: string };

const JOBS: readonly SupplyJob[] = [
  "hollow",
  "guard",
  "surface",
  "cushion",
  "outer",
  "bind",
  "divide",
  "fill",
  "seal",
];

/**
 * The first supply whose form or use unit does not say what its job must know: an area to wrap, a volume to fill, a
 * length to bind or seal.
 *
 * @param supplies - the supply for each job
 * @param habits - usual bulk, strip length, overlap
 * @returns the job and the supply, null if all suit
 * @example unsuitedSupply({ ...none, seal: tapeByTheSheet }, USUAL_HABITS)?.job // "seal"
 */
export function unsuitedSupply(supplies: ChosenSupplies, habits: Habits): UnsuitedSupply | null {
  const found = JOBS.find((job) => {
    const supply = supplies[job];
    return supply !== null && !suits(job, supply, habits);
  });
  const supply = found && supplies[found];
  return found && supply ? { job: found, supplyId: supply.supplyId } : null;
}

function suits(job: SupplyJob, supply: DraftSupply, habits: Habits): boolean {
  switch (job) {
    case "hollow":
      return fillAmount(1, supply, habits, habits.hollowManner).kind === "fill";
    case "fill":
      return fillAmount(1, supply, habits, habits.fillManner).kind === "fill";
    case "guard":
      return wraps(supply, habits) && padThickness(supply, habits) > 0;
    case "surface":
    case "cushion":
    case "outer":
      return wraps(supply, habits);
    case "divide":
      return unitArea(supply) !== null;
    case "bind":
      return unitLength(supply, habits.strips.lengthUm) !== null;
    case "seal":
      return typeof unitLength(supply, habits.strips.lengthUm) === "number";
    default:
      return job satisfies never;
  }
}

/** A sheet must be longer than the overlap, or laying sheets end to end gains nothing. */
function wraps(supply: DraftSupply, habits: Habits): boolean {
  if (unitArea(supply) === null) return false;
  const { form } = supply;
  return form.kind !== "sheet" || Math.max(form.lengthUm, form.widthUm) > habits.overlapUm;
}
