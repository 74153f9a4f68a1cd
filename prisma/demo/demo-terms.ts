import type { ShopToSave } from "#prisma/records/shop";

/** All of the demo shop is invented. Prices in cents. */
export const DEMO_SHOP: Omit<ShopToSave, "timeZone"> = {
  name: "Demo studio (invented)",
  currency: "USD",
  minorDigits: 2,
  weekStartsOn: 1,
  measures: "imperial",
  reviewDays: 7,
  servicePerMille: 950,
  coverWeeks: 6,
  defaultStyle: "paper",
  guessedParcels: null,
};

/** What the studio sells: share of its parcels, and what it calls the starter's item type. */
export const DEMO_ITEMS: readonly { readonly id: string; readonly name: string; readonly share: number }[] = [
  { id: "lamp-chimney", name: "Lamp chimney", share: 5 },
  { id: "mug", name: "Stoneware mug", share: 6 },
  { id: "mug-pair", name: "Stoneware mug pair", share: 4 },
  { id: "bowl", name: "Stoneware bowl", share: 4 },
  { id: "vase", name: "Stoneware vase", share: 3 },
  { id: "framed-tile", name: "Framed tile", share: 3 },
  { id: "mantel-clock", name: "Mantel clock", share: 2 },
];

/** What the studio expects beyond usual trade: days of its calendar, percent more and for what. */
export const DEMO_EVENTS: readonly {
  readonly id: string;
  readonly name: string;
  readonly days: "market" | "mugOffer";
  readonly upliftPercent: number;
  readonly itemTypeIds: readonly string[];
}[] = [
  { id: "demo-market", name: "Craft market", days: "market", upliftPercent: 50, itemTypeIds: [] },
  {
    id: "demo-mugs",
    name: "Mugs on offer",
    days: "mugOffer",
    upliftPercent: 100,
    itemTypeIds: ["mug", "mug-pair"],
  },
];

/** Where parcels go: postage in cents is a start and so much for each pound begun. */
export const DEMO_ZONES: readonly {
  readonly id: string;
  readonly name: string;
  readonly share: number;
  readonly startMinor: number;
  readonly poundMinor: number;
}[] = [
  { id: "near", name: "Near", share: 5, startMinor: 590, poundMinor: 85 },
  { id: "far", name: "Far", share: 4, startMinor: 690, poundMinor: 160 },
  { id: "abroad", name: "Abroad", share: 1, startMinor: 1490, poundMinor: 520 },
];

export const DEMO_SUPPLIERS: readonly {
  readonly id: string;
  readonly name: string;
  readonly leadTimeDays: number;
  readonly deliveryMinor: number;
  readonly freeDeliveryMinor: number | null;
  /** Day of the week on which it delivers, 1 Monday. */
  readonly deliversOn: number;
}[] = [
  {
    id: "demo-paper",
    name: "Demo paper supplier",
    leadTimeDays: 4,
    deliveryMinor: 650,
    freeDeliveryMinor: 9_000,
    deliversOn: 2,
  },
  {
    id: "demo-wraps",
    name: "Demo wraps supplier",
    leadTimeDays: 7,
    deliveryMinor: 900,
    freeDeliveryMinor: 12_000,
    deliversOn: 3,
  },
  {
    id: "demo-cartons",
    name: "Demo cartons supplier",
    leadTimeDays: 9,
    deliveryMinor: 1_400,
    freeDeliveryMinor: 20_000,
    deliversOn: 4,
  },
  {
    id: "demo-counter",
    name: "Demo packing counter",
    leadTimeDays: 1,
    deliveryMinor: 0,
    freeDeliveryMinor: null,
    deliversOn: 5,
  },
];

/** A pack that a demo supplier sells; the price is today's, after the rise. */
export type DemoOffer = {
  readonly supplyId: string;
  readonly supplierId: string;
  readonly pack: string;
  /** Use units in a pack. */
  readonly units: number;
  readonly priceMinor: number;
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
  /** Room of a pack at home; null where the studio never measured it. */
  readonly cubicFeet: number | null;
};

const CARTON_PRICES: readonly (readonly [string, number])[] = [
  ["8x8x8", 2_000],
  ["12x9x8", 2_500],
  ["8x8x14", 3_000],
  ["12x12x4", 2_500],
  ["12x12x8", 3_250],
  ["12x12x14", 4_000],
  ["14x14x10", 4_500],
  ["16x12x12", 5_000],
];

/** What the studio buys: one offer a supply. */
export const DEMO_OFFERS: readonly DemoOffer[] = [
  offer("tissue", "demo-paper", "ream of 480 sheets", 480, 1_750, [{ fromPacks: 4, priceMinor: 1_600 }]),
  offer(
    "packing-paper",
    "demo-paper",
    "25 lb bundle, 416 sheets",
    416,
    3_150,
    [{ fromPacks: 3, priceMinor: 2_890 }],
    0.63,
  ),
  offer(
    "small-bubble",
    "demo-wraps",
    "roll of 188 ft, 186 pieces",
    186,
    2_650,
    [{ fromPacks: 4, priceMinor: 2_450 }],
    2,
  ),
  offer("large-bubble", "demo-wraps", "roll of 125 sq ft", 125, 3_150, [], 5.2),
  offer("household-tape", "demo-wraps", "box of 6 rolls", 2_592, 1_150, []),
  offer("carton-tape", "demo-wraps", "6 rolls of 110 yd", 1_980, 1_850, []),
  ...CARTON_PRICES.map(([sizes, price]) =>
    offer(`carton-${sizes}`, "demo-cartons", "bundle of 25", 25, price, [
      { fromPacks: 4, priceMinor: Math.round(price * 0.9) },
    ]),
  ),
];

/** What else it could buy: small packs that are dear and quick, and a large one that comes later. */
export const DEMO_OTHER_OFFERS: readonly DemoOffer[] = [
  offer("packing-paper", "demo-wraps", "50 lb bundle, 832 sheets", 832, 6_400, [], 1.3),
  offer("small-bubble", "demo-counter", "roll of 47 ft, 46 pieces", 46, 990, [], 0.5),
  offer("carton-12x12x8", "demo-counter", "bundle of 10", 10, 1_690, [{ fromPacks: 3, priceMinor: 1_590 }]),
];

/** A carton that the studio once bought and that nothing it sells now goes into. */
export const DEMO_IDLE_CARTON = "carton-14x14x10";

/** Used every day, and nobody has counted it yet. */
export const DEMO_NEVER_COUNTED = "household-tape";

function offer(
  supplyId: string,
  supplierId: string,
  pack: string,
  units: number,
  priceMinor: number,
  breaks: DemoOffer["breaks"],
  cubicFeet: number | null = null,
): DemoOffer {
  return { supplyId, supplierId, pack, units, priceMinor, breaks, cubicFeet };
}
