import { amountOfUnits } from "#lib/units/amount";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { parcelBody } from "./shop-fixture";

/** A parcel of one mug in so many sheets of paper and a carton, changed as the test wants. */
export function paperParcel(id: string, sheets: number, changes: Partial<ParcelBody> = {}): ParcelBody {
  const line = { supplyId: "paper", amount: amountOfUnits(sheets), recipeStepId: null };
  return parcelBody(id, {
    lines: [{ ...line, typedValue: String(sheets), typedUnit: "sheet" }],
    ...changes,
  });
}
