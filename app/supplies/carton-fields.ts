import type { Measures } from "#lib/units/measures";
import type { Supply } from "#prisma/records/supplies";
import type { FormField } from "../_parts/form-field";
import { asTyped, blockText, massText } from "./as-typed";

const CARTONS = ["carton"];

/**
 * The fields that only a carton has.
 *
 * @param supply the supply to change, or null
 * @param measures how lengths and masses are shown
 */
export function cartonFields(supply: Supply | null, measures: Measures): FormField[] {
  const outside = blockText(
    [supply?.outsideLengthUm, supply?.outsideWidthUm, supply?.outsideHeightUm],
    measures,
  );
  return [
    {
      name: "wall",
      label: "Wall",
      kind: "choice",
      value: supply?.wall ?? "single",
      choices: [
        { value: "single", words: "single wall" },
        { value: "double", words: "double wall" },
        { value: "triple", words: "triple wall" },
      ],
      onlyFor: CARTONS,
    },
    {
      name: "rating",
      label: "Rating as printed",
      kind: "text",
      value: supply?.rating ?? "",
      hint: "32 ECT, 200 psi; none where there is no stamp",
      onlyFor: CARTONS,
    },
    {
      name: "ratedMass",
      label: "Largest gross weight as printed",
      kind: "text",
      value: massText(supply?.ratedMassMg, measures),
      hint: "65 lb",
      onlyFor: CARTONS,
    },
    {
      name: "flutes",
      label: "Flutes of the board",
      kind: "text",
      value: supply?.flutes ?? "",
      hint: "C is 4 mm thick, B 3, E 1½; BC double wall. Empty: C, or BC",
      onlyFor: CARTONS,
    },
    {
      name: "outside",
      label: "Outside, if you measured it",
      kind: "text",
      value: asTyped(supply?.outsideTyped, outside),
      hint: "packed, at its widest: what postage is charged for",
      onlyFor: CARTONS,
    },
    {
      name: "board",
      label: "Its board is",
      kind: "choice",
      value: supply?.boardUsed === true ? "reused" : "new",
      choices: [
        { value: "new", words: "new" },
        { value: "reused", words: "used before: it bears less" },
      ],
      onlyFor: CARTONS,
    },
  ];
}
