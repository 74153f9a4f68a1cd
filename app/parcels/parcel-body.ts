import { billOfMaterials } from "#lib/packing/bill";
import { type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { type Day, day, isDay } from "#lib/units/day";
import { bareLengthUnit, parseLength, parseSizes } from "#lib/units/length";
import { parseMass } from "#lib/units/mass";
import { parseMoney } from "#lib/units/money";
import type { UseUnit } from "#lib/units/use-unit";
import type { ParcelBody, ParcelLine } from "#prisma/records/parcel-body";
import { dayProblem } from "../_parts/day-problem";
import { formLineOf } from "./form-line";
import type { ParcelForm } from "./parcel-form";
import type { ParcelProblem } from "./parcel-problem";

/** What a form is read against. */
export type FormReader = {
  /** The last day that a parcel can have been packed on. */
  readonly latestDay: Day;
  readonly measures: "imperial" | "metric";
  readonly minorDigits: number;
  readonly supplies: readonly { readonly id: string; readonly useUnit: UseUnit }[];
  readonly recipes: readonly RecipeVersion[];
};

/** A read parcel, or all that has to be mended first. */
export type ReadParcel =
  | { readonly kind: "body"; readonly body: ParcelBody }
  | { readonly kind: "problems"; readonly problems: readonly ParcelProblem[] };

/**
 * Turns a form into the parcel that is recorded: typed amounts, weights, sizes and money are read in the shop's
 * measures. Where the form leaves out lines or cartons, the recipe versions of the day packed fill them in.
 * @param form the form as read by its schema
 * @param reader the shop's measures, supplies and recipes
 * @returns the body to record, or the problems with their way out
 */
export function parcelBody(form: ParcelForm, reader: FormReader): ReadParcel {
  const problems: ParcelProblem[] = [];
  const bill = recipeBill(form, reader, problems);
  const lines =
    form.lines === undefined
      ? bill.lines
      : form.lines.flatMap((line, index): ParcelLine[] => {
          const read = formLineOf(line, index, reader);
          if (read.kind === "problem") problems.push(read.problem);
          return read.kind === "line" && read.line.amount > 0 ? [read.line] : [];
        });
  const cartons =
    form.cartons === undefined
      ? bill.cartons
      : form.cartons.map((carton) => ({
          supplyId: carton.supplyId,
          ...(carton.sizesTyped
            ? { sizesTyped: withUnit(carton.sizesTyped, bareLengthUnit(reader.measures)) }
            : {}),
          ...(carton.cutTyped
            ? { cutTyped: withUnit(carton.cutTyped, bareLengthUnit(reader.measures)) }
            : {}),
        }));
  problems.push(...cartonProblems(cartons, reader), ...dayProblems(form, reader), ...shareProblems(form));
  const scale = scaleOf(form, reader, problems);
  const promised = promisedOf(form, reader, problems);
  const postageMinor = postageOf(form, reader, problems);
  if (problems.length > 0) return { kind: "problems", problems };
  return {
    kind: "body",
    body: {
      id: form.id,
      packedOn: form.packedOn,
      style: form.style,
      pieces: form.pieces,
      cartons,
      lines,
      orders: form.orders.map((order) => ({
        reference: order.reference,
        ...(order.share === undefined ? {} : { share: order.share }),
      })),
      zoneId: form.zoneId ?? null,
      ...scale,
      ...(promised === null ? {} : { promised }),
      postageMinor,
      postedOn: form.postedOn ?? null,
      unusual: form.unusual,
      note: form.note ? form.note : null,
      ...(form.countedSameDay === undefined ? {} : { countedSameDay: form.countedSameDay }),
    },
  };
}

const BARE_MASS = { imperial: "oz", metric: "g" } as const;

/** Numbers typed alone get the unit in which they were read, so that what is kept says what it means. */
function withUnit(typed: string, unit: string): string {
  return /[a-z"′″']\s*$/i.test(typed) ? typed : `${typed} ${unit}`;
}

type FilledBill = { readonly lines: readonly ParcelLine[]; readonly cartons: ParcelBody["cartons"] };

function recipeBill(form: ParcelForm, reader: FormReader, problems: ParcelProblem[]): FilledBill {
  const nothing: FilledBill = { lines: [], cartons: [] };
  if ((form.lines !== undefined && form.cartons !== undefined) || !isDay(form.packedOn)) return nothing;
  const packedOn = day(form.packedOn);
  const parts = form.pieces.flatMap((piece) => {
    const recipe = recipeOn(reader.recipes, piece.itemTypeId, form.style, packedOn);
    return recipe === null ? [] : [{ ...piece, recipe }];
  });
  const missing = form.pieces.filter((piece) => !parts.some((part) => part.itemTypeId === piece.itemTypeId));
  if (missing.length > 0 && form.lines === undefined) {
    problems.push(...missing.map((piece) => noRecipe(piece.itemTypeId, form.style)));
  }
  if (parts.length === 0) return nothing;
  const bill = billOfMaterials({ parts });
  return { lines: bill.lines, cartons: bill.cartons.map((supplyId) => ({ supplyId })) };
}

function noRecipe(itemTypeId: string, style: string): ParcelProblem {
  return {
    field: "lines",
    message: `There is no ${style} recipe for “${itemTypeId}”, so the materials can't be filled in.`,
    wayOut: "Give the lines yourself, or write the recipe first.",
  };
}

function cartonProblems(cartons: ParcelBody["cartons"], reader: FormReader): readonly ParcelProblem[] {
  return cartons.flatMap((carton, index) => {
    const found: ParcelProblem[] = [];
    if (carton.supplyId === null && carton.sizesTyped === undefined) {
      found.push({
        field: `cartons.${index}.sizesTyped`,
        message: "A saved odd carton has no sizes yet.",
        wayOut: "Type its inside sizes like 12 x 9 x 8, or choose a carton from the list.",
      });
    }
    if (carton.sizesTyped !== undefined && !threeSizes(carton.sizesTyped, reader)) {
      found.push({
        field: `cartons.${index}.sizesTyped`,
        message: `“${carton.sizesTyped}” can't be read as sizes.`,
        wayOut: "Type three numbers like 12 x 9 x 8, or 30 x 23 x 20 cm.",
      });
    }
    if (
      carton.cutTyped !== undefined &&
      parseLength(carton.cutTyped, reader.measures).kind === "unreadable"
    ) {
      found.push({
        field: `cartons.${index}.cutTyped`,
        message: `“${carton.cutTyped}” can't be read as a height.`,
        wayOut: "Type one length like 6 in or 15 cm.",
      });
    }
    return found;
  });
}

function threeSizes(text: string, reader: FormReader): boolean {
  const sizes = parseSizes(text, reader.measures);
  return sizes.kind === "sizes" && sizes.um.length === 3;
}

function dayProblems(form: ParcelForm, reader: FormReader): readonly ParcelProblem[] {
  const days = [
    { field: "packedOn", text: form.packedOn },
    { field: "postedOn", text: form.postedOn ?? form.packedOn },
  ];
  const unread = days.filter(({ text }) => !isDay(text));
  if (unread.length > 0) {
    return unread.map(({ field, text }) => ({
      field,
      message: `“${text}” is no day of the calendar.`,
      wayOut: "Give it as year, month and day, like 2026-11-25.",
    }));
  }
  const problem = dayProblem(day(form.packedOn), reader.latestDay);
  if (problem !== null) {
    return [
      {
        field: "packedOn",
        message: `Day packed: ${problem}`,
        wayOut: "It stands under “day, postage, double box, note”.",
      },
    ];
  }
  if (form.postedOn == null || form.postedOn >= form.packedOn) return [];
  return [
    {
      field: "postedOn",
      message: "The parcel would be posted before it was packed.",
      wayOut: "Change the day posted or the day packed.",
    },
  ];
}

const WHOLE_SHARE = 12_000;

function shareProblems(form: ParcelForm): readonly ParcelProblem[] {
  const shares = form.orders.map((order) => order.share);
  if (shares.every((share) => share === undefined)) return [];
  const total = shares.reduce<number>((sum, share) => sum + (share ?? 0), 0);
  if (total === WHOLE_SHARE && shares.every((share) => share !== undefined)) return [];
  return [
    {
      field: "orders",
      message: `The shares of the orders come to ${total} of 12000.`,
      wayOut: "Give every order a share so that they come to 12000, or leave all shares out to split evenly.",
    },
  ];
}

/** Twice what parcel carriers take (70 kg or 150 lb; common practice, no source): above it a figure was mistyped. */
const HEAVIEST_MG = 140_000_000;

function scaleOf(
  form: ParcelForm,
  reader: FormReader,
  problems: ParcelProblem[],
): Pick<ParcelBody, "scaleMg" | "scaleTyped"> {
  if (!form.scaleTyped) return { scaleMg: null, scaleTyped: null };
  const mass = parseMass(form.scaleTyped, reader.measures);
  if (mass.kind === "mass" && mass.mg > HEAVIEST_MG) {
    problems.push({
      field: "scaleTyped",
      message: `“${form.scaleTyped}” is more than any parcel weighs.`,
      wayOut: "Read the scale again and type it like 2 lb 15 oz or 1.2 kg, or leave it empty.",
    });
    return { scaleMg: null, scaleTyped: null };
  }
  if (mass.kind === "mass" && mass.mg > 0)
    return { scaleMg: mass.mg, scaleTyped: withUnit(form.scaleTyped, BARE_MASS[reader.measures]) };
  problems.push({
    field: "scaleTyped",
    message: `“${form.scaleTyped}” can't be read as a weight.`,
    wayOut: "Type it like 2 lb 15 oz, 450 g or 1.2 kg, or leave it empty.",
  });
  return { scaleMg: null, scaleTyped: null };
}

function promisedOf(
  form: ParcelForm,
  reader: FormReader,
  problems: ParcelProblem[],
): NonNullable<ParcelBody["promised"]> | null {
  if (!form.promisedTyped) return null;
  const mass = parseMass(form.promisedTyped, reader.measures);
  if (mass.kind === "mass" && mass.mg > 0 && mass.mg <= HEAVIEST_MG) {
    return { mg: mass.mg, typed: withUnit(form.promisedTyped, BARE_MASS[reader.measures]) };
  }
  problems.push({
    field: "promisedTyped",
    message: `“${form.promisedTyped}” can't be read as the weight promised.`,
    wayOut: "Type the most that the parcel may weigh, like 2 lb or 1 kg, or leave it empty.",
  });
  return null;
}

function postageOf(form: ParcelForm, reader: FormReader, problems: ParcelProblem[]): number | null {
  if (!form.postageTyped) return form.postageMinor ?? null;
  const money = parseMoney(form.postageTyped, reader.minorDigits);
  if (money.kind === "money" && money.minor >= 0) return money.minor;
  problems.push({
    field: "postageTyped",
    message: `“${form.postageTyped}” can't be read as money.`,
    wayOut: "Type it like 9.80, or leave it empty.",
  });
  return null;
}
