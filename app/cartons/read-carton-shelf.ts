import { closedCalendar, openDays } from "#lib/forecast/open-days";
import type { Habits } from "#lib/packing/habits";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { type CartonSettings, cartonSettingsOf } from "#prisma/records/carton-terms";
import { cartonUseDays, firstPackedDay } from "#prisma/records/carton-use-days";
import { closedSpansOf } from "#prisma/records/closed-spans";
import { habitsOf } from "#prisma/records/habits";
import { type ItemType, itemTypesOf } from "#prisma/records/item-types";
import { packedKinds } from "#prisma/records/packed-kinds";
import { openPurchaseLines } from "#prisma/records/purchases";
import { type Supply, stockOf, suppliesOf } from "#prisma/records/supplies";
import type { ShopNow } from "../_parts/shop-now";
import type { ListingPostage } from "../pack/listing/likely-postage";
import { readListingPostage } from "../pack/listing/read-listing-postage";
import { styleFrom } from "../pack/style-from";
import { draftShelf } from "../recipes/[id]/draft/draft-shelf";
import { supplyTerms } from "../recipes/supply-terms";
import { sizedCarton } from "./carton-board";
import { type LoadGround, type PackedLoads, packedLoads } from "./packed-loads";
import { type ShelfCarton, shelfCarton } from "./shelf-carton";
import { type ShopTerms, termsOfShop } from "./terms-of-shop";
import { type WrapGround, type WrappedType, wrappedType } from "./wrapped-type";

const YEAR_DAYS = 365;

/** The cartons of the shop, and what they are judged by. */
export type CartonShelf = {
  readonly today: Day;
  readonly cartons: readonly ShelfCarton[];
  /** cartons without inside sizes */
  readonly unsized: readonly Supply[];
  readonly itemTypes: readonly ItemType[];
  readonly settings: CartonSettings;
  readonly rangeSizes: string;
  readonly habits: Habits;
  readonly wrap: WrapGround;
  /** what past parcels are looked at with */
  readonly loadGround: LoadGround;
  /** what was packed in the last year */
  readonly packed: PackedLoads;
  /** what packing costs in the shop's usual style; null where nothing on the shelf fills */
  readonly terms: ShopTerms | null;
  readonly termsIn: (style: CushionStyle) => ShopTerms | null;
  readonly postage: ListingPostage;
};

/**
 * Reads the cartons, their use in the last year, and what was packed in it.
 *
 * @param shopNow the open database, the shop and its day
 */
export async function readCartonShelf(shopNow: ShopNow): Promise<CartonShelf> {
  const { db, shop, today } = shopNow;
  const from = addDays(today, 1 - YEAR_DAYS);
  const [supplies, itemTypes, stocks, useDays, firstDay, closed, lines, habits, kept, postage, kinds] =
    await Promise.all([
      suppliesOf(db),
      itemTypesOf(db, { retired: true }),
      stockOf(db),
      cartonUseDays(db, from),
      firstPackedDay(db),
      closedSpansOf(db),
      openPurchaseLines(db),
      habitsOf(db),
      cartonSettingsOf(db),
      readListingPostage(shopNow),
      packedKinds(db, { from, to: today }),
    ]);
  const shelf = draftShelf(supplies);
  const terms = await supplyTerms(db, supplies);
  const calendar = closedCalendar(
    closed.map(({ fromDay, toDay }) => ({ fromDay: day(fromDay), toDay: day(toDay) })),
  );
  const onOrder = new Map<string, number>();
  for (const line of lines) {
    const units = unitsOf(line.packAmount) * line.packs;
    onOrder.set(line.supplyId, (onOrder.get(line.supplyId) ?? 0) + units);
  }
  const wrap = { habits, shelf, measures: shop.measures };
  const wrappedOf = remembered(itemTypes, wrap);
  const { settings } = kept;
  const ground = {
    habits,
    shelf,
    supplies: terms,
    postage: postage.postage,
    today,
    bulgeUm: settings.bulgeUm,
  };
  const termsIn = (style: CushionStyle) => termsOfShop(style, ground);
  const cartons = supplies.filter(({ kind }) => kind === "carton");
  const sized = cartons.flatMap(
    (supply) => sizedCarton(supply, settings.bulgeUm, habits.boardPoundsPerSquareFoot) ?? [],
  );
  const insides = new Map(sized.map(({ supply, inside }) => [supply.id, inside]));
  const loadGround: LoadGround = {
    wrappedOf,
    insideOf: (cartonId) => insides.get(cartonId ?? "") ?? null,
    papersMg: habits.papersMg,
  };
  return {
    today,
    cartons: sized.map((carton) =>
      shelfCarton(carton, {
        today,
        watchedFrom: firstDay === null || firstDay > today ? today : firstDay,
        useDays,
        stock: new Map(stocks.map((stock) => [stock.supplyId, stock])),
        onOrder,
        replacement: terms.replacement,
        ageing: settings.ageing,
        holdingPerMille: shop.holdingPerMille,
        orderCostMinor: shop.orderCostMinor,
        openDays: (since, until) => openDays(since, until, calendar),
      }),
    ),
    unsized: cartons.filter(({ id }) => !sized.some(({ supply }) => supply.id === id)),
    itemTypes,
    settings,
    rangeSizes: kept.rangeSizes,
    habits,
    wrap,
    packed: packedLoads(kinds, loadGround),
    loadGround,
    terms: termsIn(styleFrom(shop.defaultStyle)),
    termsIn,
    postage: postage.postage,
  };
}

function remembered(itemTypes: readonly ItemType[], wrap: WrapGround): LoadGround["wrappedOf"] {
  const byId = new Map(itemTypes.map((type) => [type.id, type]));
  const known = new Map<string, WrappedType | null>();
  return (itemTypeId, style) => {
    const key = `${style} ${itemTypeId}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const type = byId.get(itemTypeId);
    const wrapped = type === undefined ? null : wrappedType(type, style, wrap);
    known.set(key, wrapped);
    return wrapped;
  };
}
