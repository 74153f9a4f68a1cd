import { bareLengthUnit, formatSizes, micrometres } from "#lib/units/length";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import type { ItemType } from "#prisma/records/item-types";
import type { FormField } from "../_parts/form-field";

/**
 * The fields of an item type: empty for a new one.
 *
 * @param itemType the type to change, or null
 * @param shop how masses and sizes are shown, and the digits of its currency
 * @returns the fields in order
 */
export function itemTypeFields(
  itemType: ItemType | null,
  { measures, minorDigits }: { readonly measures: Measures; readonly minorDigits: number },
): FormField[] {
  const fields: FormField[] = [
    {
      name: "name",
      label: "What it is",
      kind: "text",
      value: itemType?.name,
      hint: "mug pair, mantel clock",
      required: true,
    },
    {
      name: "mass",
      label: "The bare piece weighs",
      kind: "text",
      value: massText(itemType, measures),
      hint: "370 g, 1 lb 10 oz",
    },
    {
      name: "sizes",
      label: "Its outer sizes, handle and spout included",
      kind: "text",
      value: sizesText(itemType, measures),
      hint: "5 x 4 x 4",
    },
    {
      name: "value",
      label: "One sells for",
      kind: "number",
      value: valueText(itemType, minorDigits),
      hint: "may stay empty; what a breakage costs is reckoned with it",
    },
    { name: "note", label: "Note", kind: "lines", value: itemType?.note ?? "" },
  ];
  return itemType === null ? fields : [...fields, { name: "retired", label: "No longer sold", kind: "tick" }];
}

/**
 * What the bare piece weighs, as it stands in a field.
 *
 * @param itemType its mass and what was typed
 * @param measures how a mass is shown that was typed without a unit
 * @returns "370 g"; empty where it was never weighed
 */
export function massText(
  itemType: Pick<ItemType, "massMg" | "massTyped"> | null,
  measures: Measures,
): string {
  if (itemType?.massMg == null) return "";
  const typed = itemType.massTyped ?? "";
  return /[a-z]$/i.test(typed) ? typed : formatMass(milligrams(itemType.massMg), measures);
}

function valueText(itemType: ItemType | null, minorDigits: number): string {
  const minor = itemType?.valueMinor ?? null;
  return minor === null ? "" : (minor / 10 ** minorDigits).toFixed(minorDigits);
}

function sizesText(itemType: ItemType | null, measures: Measures): string {
  const sizes = [itemType?.lengthUm, itemType?.widthUm, itemType?.heightUm]
    .filter((um) => um != null)
    .map(micrometres);
  return sizes.length === 0 ? "" : `${formatSizes(sizes, measures)} ${bareLengthUnit(measures)}`;
}
