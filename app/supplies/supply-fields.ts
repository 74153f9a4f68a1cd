import { MATERIALS } from "#lib/packing/material";
import { unitsOf } from "#lib/units/amount";
import { formatLength, micrometres } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { USE_UNITS, type UseUnit, unitWord } from "#lib/units/use-unit";
import { goalOf } from "#prisma/records/buying-terms";
import type { Supply } from "#prisma/records/supplies";
import type { FormField } from "../_parts/form-field";
import { promiseChoices, promiseValue } from "../setup/promise";
import { asTyped, blockText, massText } from "./as-typed";
import { cartonFields } from "./carton-fields";
import { MATERIAL_WORDS } from "./material-words";
import { SUPPLY_KINDS } from "./supply-form";

const USE_UNIT_WORDS: Readonly<Record<UseUnit, string>> = {
  sheet: "sheets, and parts of one",
  piece: "torn pieces",
  each: "one at a time",
  foot: "feet",
  metre: "metres",
  "square-foot": "square feet",
  "square-metre": "square metres",
  strip: "strips",
};

const ROLLS = ["bubble", "tape", "paper", "other"];
const LAYERED = ["bubble", "paper", "other"];
const PILES = ["tissue", "paper", "other"];
const MATERIAL_KINDS = SUPPLY_KINDS.filter((kind) => kind !== "carton");
const SHEETS_OF_A_REAM = 500;
const DIGITS_KEPT = 5;

/**
 * The fields of a supply: empty for a new one. Fields that only some kinds need show for those kinds.
 *
 * @param supply the supply to change, or null
 * @param measures how lengths and masses are shown
 * @returns the fields in order
 */
export function supplyFields(supply: Supply | null, measures: Measures): FormField[] {
  return [
    ...nameFields(supply),
    ...countFields(supply, measures),
    ...rollFields(supply, measures),
    ...cartonFields(supply, measures),
    ...lastFields(supply),
  ];
}

function nameFields(supply: Supply | null): FormField[] {
  return [
    {
      name: "name",
      label: "Name on the shelf",
      kind: "text",
      value: supply?.name,
      hint: "Small bubble, Carton 12 × 9 × 8",
      required: true,
    },
    {
      name: "kind",
      label: "What it is",
      kind: "choice",
      value: supply?.kind ?? "paper",
      choices: SUPPLY_KINDS.map((kind) => ({ value: kind, words: kind })),
    },
    {
      name: "useUnit",
      label: "Used as",
      kind: "choice",
      value: supply?.useUnit ?? "sheet",
      hint: "What the recipe counts in. It cannot change once something has moved.",
      choices: USE_UNITS.map((unit) => ({ value: unit, words: USE_UNIT_WORDS[unit] })),
    },
    {
      name: "material",
      label: "Made of",
      kind: "choice",
      value: supply?.material ?? "",
      choices: [
        { value: "", words: "as its kind says" },
        ...MATERIALS.map((material) => ({ value: material, words: MATERIAL_WORDS[material] })),
      ],
      hint: "So that recipes can be drafted with it, and it can stand in for another.",
      onlyFor: MATERIAL_KINDS,
    },
  ];
}

function countFields(supply: Supply | null, measures: Measures): FormField[] {
  return [
    {
      name: "countUnit",
      label: "Counted as",
      kind: "text",
      value: supply?.countUnit ?? "",
      hint: "roll, bundle; empty: counted as it is used",
    },
    {
      name: "countAmount",
      label: "In one of those",
      kind: "number",
      value: amountText(supply, "countAmount"),
      hint: "188 ft, 500",
    },
    {
      name: "mass",
      label: "Weight of one as used",
      kind: "text",
      value: asTyped(supply?.massTyped, massText(supply?.massMg, measures)),
      hint: "27 g, 0.2 oz. Weigh ten, divide by ten.",
    },
    {
      name: "sizes",
      label: "Sizes; of a carton inside",
      kind: "text",
      value: asTyped(supply?.sizesTyped, sizesText(supply, measures)),
      hint: "24 x 36, 12 x 9 x 8",
    },
  ];
}

function rollFields(supply: Supply | null, measures: Measures): FormField[] {
  const length = (um: number | null | undefined) =>
    um == null ? "" : formatLength(micrometres(um), measures);
  const pile = supply?.sheetNm == null ? "" : `${(supply.sheetNm * SHEETS_OF_A_REAM) / 1_000_000} mm`;
  return [
    {
      name: "core",
      label: "Core of a roll, across",
      kind: "text",
      value: length(supply?.coreUm),
      hint: "3 in",
      onlyFor: ROLLS,
    },
    {
      name: "full",
      label: "Full roll, across",
      kind: "text",
      value: length(supply?.fullUm),
      hint: "18.5 in",
      onlyFor: ROLLS,
    },
    {
      name: "fullAmount",
      label: "A full roll holds",
      kind: "text",
      value: amountText(supply, "fullAmount"),
      hint: "175 ft",
      onlyFor: ROLLS,
    },
    {
      name: "coreMass",
      label: "The bare core weighs",
      kind: "text",
      value: massText(supply?.coreMassMg, measures),
      onlyFor: ROLLS,
    },
    {
      name: "layer",
      label: "One layer is so thick",
      kind: "text",
      value: asTyped(supply?.layerTyped, length(supply?.layerUm)),
      hint: "3/16 in. Lay ten on each other, divide by ten.",
      onlyFor: LAYERED,
    },
    {
      name: "pileSheets",
      label: "A pressed pile of so many sheets",
      kind: "number",
      value: pile === "" ? "" : String(SHEETS_OF_A_REAM),
      hint: "500",
      onlyFor: PILES,
    },
    { name: "pileHeight", label: "is this high", kind: "text", value: pile, hint: "1.5 in", onlyFor: PILES },
  ];
}

function lastFields(supply: Supply | null): FormField[] {
  const note: FormField = { name: "note", label: "Note", kind: "lines", value: supply?.note ?? "" };
  if (supply === null) return [note];
  return [
    ...keepingFields(supply),
    note,
    { name: "retired", label: "No longer used", kind: "tick", value: supply.retired ? "yes" : "" },
  ];
}

/** What is promised of it, how long it keeps, and until when it is used. */
function keepingFields({ goal, goalPerMille, shelfLifeDays, lastUseOn }: Supply): FormField[] {
  const own = goal === null || goalPerMille === null ? null : { goal: goalOf(goal), perMille: goalPerMille };
  return [
    {
      name: "promise",
      label: "Of this supply you want to",
      kind: "choice",
      value: own === null ? "" : promiseValue(own),
      choices: [{ value: "", words: "do as the shop does" }, ...promiseChoices(own)],
      hint: "An order cycle lasts from one delivery to the next.",
    },
    {
      name: "shelfLife",
      label: "Keeps on the shelf, days",
      kind: "number",
      value: shelfLifeDays?.toString() ?? "",
      hint: "tape dries out, some fill crumbles; empty: it keeps",
    },
    {
      name: "lastUseOn",
      label: "Last day of use",
      kind: "day",
      value: lastUseOn ?? "",
      hint: "what is left is run down until then; empty: none planned",
    },
  ];
}

/** Every digit that the stored amount has, so that saving again changes nothing. */
function amountText(supply: Supply | null, column: "countAmount" | "fullAmount"): string {
  const value = supply?.[column] ?? null;
  if (supply === null || value === null) return "";
  const units = unitsOf(value);
  return `${Number(units.toFixed(DIGITS_KEPT))} ${unitWord(supply.useUnit, units)}`.trim();
}

function sizesText(supply: Supply | null, measures: Measures): string {
  return blockText([supply?.lengthUm, supply?.widthUm, supply?.heightUm], measures);
}
