import type { RecipeStep, RecipeVersion } from "#lib/packing/recipe-version";
import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { groupedBy } from "./grouped-by";
import type { ImportConnection } from "./import-connection";

type HeadRow = { id: string; itemTypeId: string; style: RecipeVersion["style"]; effectiveFrom: string };
type StepRow = Omit<RecipeStep, "amount"> & { recipeId: string; amount: number };
type CartonRow = { recipeId: string; upTo: number; supplyId: string };

/** Every recipe version of the shop by item type and style ("mug/paper"). */
export function recipeBook(db: ImportConnection): Map<string, RecipeVersion[]> {
  const steps = groupedBy(
    db.prepare<[], StepRow>(`SELECT * FROM "RecipeStep" ORDER BY "position"`).all(),
    (row) => row.recipeId,
  );
  const cartons = groupedBy(
    db.prepare<[], CartonRow>(`SELECT * FROM "RecipeCarton" ORDER BY "upTo"`).all(),
    (row) => row.recipeId,
  );
  const versions = db
    .prepare<[], HeadRow>(
      `SELECT "id", "itemTypeId", "style", "effectiveFrom" FROM "Recipe" ORDER BY "effectiveFrom"`,
    )
    .all()
    .map((row) => ({
      ...row,
      effectiveFrom: day(row.effectiveFrom),
      steps: (steps.get(row.id) ?? []).map(({ recipeId: _recipe, ...step }) => ({
        ...step,
        amount: amount(step.amount),
      })),
      cartons: (cartons.get(row.id) ?? []).map(({ upTo, supplyId }) => ({ upTo, supplyId })),
    }));
  return groupedBy(versions, (version) => `${version.itemTypeId}/${version.style}`);
}
