import { z } from "zod";
import { EVENT_LIMITS } from "#lib/forecast/planned-event";
import { day, daysBetween, isDay } from "#lib/units/day";
import { USE_UNITS } from "#lib/units/use-unit";

const id = z.string().regex(/^[a-z0-9][a-z0-9-]*$/, "must be small letters, digits and hyphens");
const words = z.string().min(1);
const dayText = z
  .string()
  .refine(isDay, "must be a day, YYYY-MM-DD")
  .transform((text) => day(text));
const whole = z.number().int().nonnegative();
const aboveZero = z.number().int().positive();
/** Read in the supply's use unit: "1 1/2", "90 in". */
const amountText = z.string().min(1);

const perMille = z.number().int().min(500).max(999);
/** A day of every year. */
const monthDay = z.string().refine((text) => isDay(`2028-${text}`), "must be a day of the year, MM-DD");

const shop = z.strictObject({
  name: words,
  timeZone: words,
  currency: z.string().regex(/^[A-Z]{3}$/, "must be three capital letters"),
  minorDigits: z.number().int().min(0).max(4),
  weekStartsOn: z.number().int().min(1).max(7),
  measures: z.enum(["imperial", "metric"]),
  reviewDays: aboveZero,
  servicePerMille: perMille,
  coverWeeks: aboveZero,
  defaultStyle: z.enum(["paper", "bubble", "mixed"]),
  guessedParcels: z.number().int().min(1).max(2_000).nullable().default(null),
  goal: z.enum(["cycles", "share"]).optional(),
  longestCoverWeeks: aboveZero.optional(),
  holdingPerMille: z.number().int().min(0).max(1_000).optional(),
  orderCostMinor: whole.optional(),
  weekLimitMinor: whole.nullable().optional(),
  /** "40 cu ft", "2 x 1 x 0.5 m" */
  room: words.nullable().optional(),
});

/** Without item types it holds for all of them. */
const event = z
  .strictObject({
    name: words.max(EVENT_LIMITS.letters),
    from: dayText,
    to: dayText,
    upliftPercent: z.number().int().min(EVENT_LIMITS.leastUplift).max(EVENT_LIMITS.mostUplift),
    itemTypes: z.array(id).default([]),
  })
  .refine((planned) => planned.from <= planned.to, {
    path: ["to"],
    message: "must not lie before the event’s first day",
  })
  .refine((planned) => daysBetween(planned.from, planned.to) < EVENT_LIMITS.days, {
    path: ["to"],
    message: `must lie within ${EVENT_LIMITS.days} days of the event’s first day`,
  });

const supply = z.strictObject({
  id,
  name: words,
  kind: z.enum(["tissue", "paper", "bubble", "tape", "carton", "fill", "other"]),
  unit: z.enum(USE_UNITS),
  mass: words.optional(),
  sizes: words.optional(),
  goal: z.strictObject({ kind: z.enum(["cycles", "share"]), perMille }).optional(),
  shelfLifeDays: aboveZero.optional(),
  lastUseOn: dayText.optional(),
});

const supplier = z
  .strictObject({
    id,
    name: words,
    leadTimeDays: whole,
    deliveryMinor: whole,
    freeDeliveryMinor: whole.optional(),
    leastOrderMinor: whole.optional(),
    workingDays: z.boolean().optional(),
    orderDays: z
      .string()
      .regex(/^[1-7]{1,7}$/, "must be digits of weekdays, 1 Monday to 7 Sunday")
      .optional(),
    cutOff: z
      .string()
      .regex(/^([01]\d|2[0-3]):[0-5]\d$/, "must be a time, HH:MM")
      .optional(),
    peak: z.strictObject({ from: monthDay, to: monthDay, extraDays: whole }).optional(),
    closed: z.array(z.strictObject({ from: dayText, to: dayText })).optional(),
  })
  .refine((row) => (row.closed ?? []).every((span) => span.from <= span.to), {
    path: ["closed"],
    message: "must not end before it begins",
  });

const offer = z.strictObject({
  id,
  supply: id,
  supplier: id,
  pack: words,
  packAmount: amountText,
  price: whole.nullable(),
  breaks: z.array(z.strictObject({ fromPacks: aboveZero, price: whole })).optional(),
  breakKind: z.enum(["all-units", "incremental"]).optional(),
  /** room of one pack: "1.9 cu ft" */
  room: words.optional(),
});

const recipe = z.strictObject({
  style: z.enum(["paper", "bubble", "mixed"]),
  from: dayText,
  steps: z
    .array(z.strictObject({ words, supply: id, amount: amountText, per: z.enum(["piece", "parcel"]) }))
    .min(1),
  cartons: z.array(z.strictObject({ upTo: aboveZero, supply: id })),
});

/**
 * The shape of a shop file: a whole shop without its parcels. Prices and delivery are in minor units of the
 * shop's currency, amounts are text in the supply's use unit.
 */
export const SHOP_FILE_SCHEMA = z.strictObject({
  note: z.string().optional(),
  shop,
  zones: z.array(z.strictObject({ id, name: words })),
  closed: z.array(z.strictObject({ from: dayText, to: dayText, words })),
  events: z.array(event).default([]),
  supplies: z.array(supply).min(1),
  suppliers: z.array(supplier),
  offers: z.array(offer),
  itemTypes: z.array(z.strictObject({ id, name: words, mass: words.optional(), recipes: z.array(recipe) })),
  counts: z.array(z.strictObject({ supply: id, on: dayText, amount: amountText })),
  receipts: z.array(
    z.strictObject({
      on: dayText,
      supplier: id.nullable(),
      delivery: whole,
      lines: z
        .array(
          z.strictObject({ supply: id, packs: aboveZero, packAmount: amountText, price: whole.nullable() }),
        )
        .min(1),
    }),
  ),
});

/** A shop file whose shape is right. */
export type ShopFile = z.infer<typeof SHOP_FILE_SCHEMA>;
