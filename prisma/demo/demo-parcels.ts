import { billOfMaterials } from "#lib/packing/bill";
import { type CushionStyle, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { type DemoCalendar, daysFrom, packsOn } from "#prisma/demo/demo-calendar";
import { DEMO_ITEMS, DEMO_ZONES } from "#prisma/demo/demo-terms";
import { pickByShare } from "#prisma/demo/pick-by-share";
import type { Random } from "#prisma/demo/seeded-random";
import type { ParcelBody } from "#prisma/records/parcel-body";

/** What became of a demo parcel after it was packed. */
export type DemoFate = "usual" | "void" | "corrected" | "broken" | "returned" | "late";

/** A parcel of the demo shop as it really was packed, and what became of it. */
export type DemoParcel = {
  readonly body: ParcelBody;
  readonly fate: DemoFate;
  /** Minutes after the day began. */
  readonly minute: number;
};

/** Parcels a week in an ordinary month, and how each month from January differs: a peak before the year's end. */
const PARCELS_A_WEEK = 16;
const MONTH_FACTORS = [0.8, 0.9, 0.9, 1, 1, 0.9, 0.85, 0.85, 1, 1.15, 1.5, 1.85];

const FATES: readonly { readonly fate: DemoFate; readonly share: number }[] = [
  { fate: "usual", share: 970 },
  { fate: "void", share: 6 },
  { fate: "corrected", share: 7 },
  { fate: "broken", share: 6 },
  { fate: "returned", share: 4 },
  { fate: "late", share: 7 },
];

const FIRST_ORDER = 10_001;
const OPENS_AT_MINUTE = 600;
const MINUTES_A_PARCEL = 35;

/**
 * Invents the demo shop's parcels from its recipes.
 *
 * @param random - where the chances come from
 * @param calendar - the shop's days
 * @param recipes - every recipe version of the shop
 * @returns parcels in the order in which they were packed, not weighed yet
 * @throws RangeError if an item type has no recipe
 * @example demoParcels(seededRandom(1), calendar, await recipesOf(db)).length; // about 1,200
 */
export function demoParcels(
  random: Random,
  calendar: DemoCalendar,
  recipes: readonly RecipeVersion[],
): DemoParcel[] {
  const days = daysFrom(calendar.firstDay, calendar.lastDay).filter((each) => packsOn(calendar, each));
  let order = FIRST_ORDER;
  return days.flatMap((packedOn) => {
    const expected = (PARCELS_A_WEEK * (MONTH_FACTORS[Number(packedOn.slice(5, 7)) - 1] ?? 1)) / 5;
    const count = Math.floor(expected + random());
    return Array.from({ length: count }, (_, index) => {
      order += 1;
      const fate = pickByShare(random, FATES).fate;
      const body = packedParcel(random, calendar, recipes, { packedOn, order });
      return { body, fate, minute: OPENS_AT_MINUTE + index * MINUTES_A_PARCEL };
    });
  });
}

function packedParcel(
  random: Random,
  calendar: DemoCalendar,
  recipes: readonly RecipeVersion[],
  parcel: { readonly packedOn: Day; readonly order: number },
): ParcelBody {
  const itemTypeId = pickByShare(random, DEMO_ITEMS).id;
  const pieces = itemTypeId === "mug" ? pickByShare(random, MUGS).pieces : 1;
  const style = styleOn(random, calendar, parcel.packedOn);
  const recipe = recipeOn(recipes, itemTypeId, style, parcel.packedOn);
  if (recipe === null)
    throw new RangeError(`demoParcels requires a ${style} recipe of ${itemTypeId}, got none`);
  const bill = billOfMaterials({ parts: [{ itemTypeId, pieces, recipe }] });
  const unusual = random() < 0.01;
  return {
    id: `demo-${parcel.order}`,
    packedOn: parcel.packedOn,
    style,
    pieces: [{ itemTypeId, pieces }],
    cartons: cartons(random, bill.cartons),
    lines: bill.lines.map((line) => moreOrLess(random, line)),
    orders: orders(random, parcel.order),
    zoneId: pickByShare(random, DEMO_ZONES).id,
    scaleMg: null,
    scaleTyped: null,
    postageMinor: null,
    postedOn: parcel.packedOn,
    unusual,
    note: unusual ? "A gift: wrapped twice" : null,
  };
}

const MUGS = [
  { pieces: 1, share: 6 },
  { pieces: 2, share: 3 },
  { pieces: 4, share: 1 },
];

function styleOn(random: Random, calendar: DemoCalendar, packedOn: Day): CushionStyle {
  const other = random() < 0.08;
  const paper = packedOn >= calendar.switchDay ? !other : other;
  return paper ? "paper" : "bubble";
}

/** Now and then a saved odd carton, or one cut down. */
function cartons(random: Random, ids: readonly string[]): ParcelBody["cartons"] {
  const chance = random();
  if (chance < 0.05) return [{ supplyId: null, sizesTyped: "13 x 11 x 9 in" }];
  const [first, ...rest] = ids.map((supplyId) => ({ supplyId }));
  if (first === undefined) return [];
  return chance < 0.07 ? [{ ...first, cutTyped: "7 in" }, ...rest] : [first, ...rest];
}

/** One fill in seven takes a sheet more than its card says. */
function moreOrLess<Line extends ParcelBody["lines"][number]>(random: Random, line: Line): Line {
  if (line.supplyId !== "packing-paper" || random() > 0.15) return line;
  const more = amount(line.amount + AMOUNT_PER_UNIT);
  return { ...line, amount: more, typedValue: String(more / AMOUNT_PER_UNIT) };
}

/** Mostly one order a parcel; some parcels hold two orders, some orders take two parcels. */
function orders(random: Random, order: number): ParcelBody["orders"] {
  const chance = random();
  if (chance < 0.03) return [{ reference: `D-${order}` }, { reference: `D-${order}-B` }];
  return [{ reference: chance > 0.98 ? `D-${order - 1}` : `D-${order}` }];
}
