"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { type Supply, saveSupply, suppliesOf } from "#prisma/records/supplies";
import { type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { newSlug } from "../_parts/new-slug";
import { shopNow } from "../_parts/shop-now";
import { supplyForm, useUnitForm } from "./supply-form";
import { supplyOfForm } from "./supply-of-form";

/** Adds a supply, or saves the changes of the one with this id. */
export async function keepSupply(
  supplyId: string | null,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db, shop } = await shopNow();
  const unit = useUnitForm.safeParse(typedValues(form));
  if (!unit.success) return refused(before, form, problemsOf(unit.error));
  const read = supplyForm(unit.data.useUnit, shop.measures).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const supplies = await suppliesOf(db, { retired: true });
  const known = supplies.find((row) => row.id === supplyId);
  const supply = supplyOfForm(read.data, known ?? newPlace(read.data.name, supplies));
  const outcome = await saveSupply(db, supply);
  if (outcome.kind === "use-unit-fixed") {
    return refused(before, form, {
      useUnit: "Something has moved in the old unit. Add a new supply instead.",
    });
  }
  revalidatePath("/", "layout");
  redirect(`/supplies/${supply.id}`);
}

/** The place of a new supply: a readable id, at the end of the shelf. */
function newPlace(name: string, supplies: readonly Supply[]): Pick<Supply, "id" | "position" | "useFirst"> {
  const position = Math.max(-1, ...supplies.map((supply) => supply.position)) + 1;
  return {
    id: newSlug(
      name,
      supplies.map((supply) => supply.id),
    ),
    position,
    useFirst: false,
  };
}
