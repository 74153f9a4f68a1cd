import { describedSupply } from "#lib/packing/described-supply";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { mainCardOn } from "#lib/postage/card-on";
import { addDays } from "#lib/units/day";
import { formatSizes, micrometres } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { itemTypesOf } from "#prisma/records/item-types";
import { knownWeightsOn } from "#prisma/records/known-weights";
import { newestLine } from "#prisma/records/movements";
import {
  type ParcelDetail,
  type ParcelSummary,
  parcelCountsOf,
  parcelsOf,
} from "#prisma/records/parcel-lists";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { type Recipe, recipesOf } from "#prisma/records/recipes";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { substitutesOf } from "#prisma/records/substitutes";
import { type Stock, type Supply, stockOf, suppliesOf } from "#prisma/records/supplies";
import { zonesOf } from "#prisma/records/zones";
import type { ShopNow } from "../_parts/shop-now";
import { likelyChoices } from "./likely-choices";
import type { ItemTypeChoice, LikelyChoice, PackingChoices, SupplyChoice } from "./packing-choices";
import { promiseSteps } from "./promise-steps";
import { readStepPrices } from "./read-step-prices";
import { readUseFirst } from "./read-use-first";
import { styleFrom } from "./style-from";

/** Parcels looked at for what was chosen last, and days for what is packed most. */
const PARCELS_LOOKED_AT = 120;
const DAYS_OF_LATE = 28;

/**
 * Reads all that the packing desk needs, as plain values.
 * @param shopNow the open database, the shop and its day
 * @param corrected the parcel to correct: what it holds is offered even where it is retired by now
 * @returns item types with the most packed first, supplies, zones, recipes and the likely choices
 */
export async function readPackingChoices(
  shopNow: ShopNow,
  corrected: ParcelDetail | null = null,
): Promise<PackingChoices> {
  const { db, shop, today } = shopNow;
  const [
    itemTypes,
    supplies,
    stock,
    zones,
    recipes,
    recent,
    counts,
    substitutes,
    weights,
    cards,
    lastLine,
    prices,
  ] = await Promise.all([
    itemTypesOf(db),
    suppliesOf(db, { retired: true }),
    stockOf(db),
    zonesOf(db),
    recipesOf(db),
    parcelsOf(db, { limit: PARCELS_LOOKED_AT }),
    parcelCountsOf(db, { from: addDays(today, -DAYS_OF_LATE), to: today }),
    substitutesOf(db),
    knownWeightsOn(db, today),
    rateCardsOf(db, shop),
    newestLine(db),
    replacementPrices(db),
  ]);
  const ofLate = new Map<string, number>();
  for (const count of counts)
    ofLate.set(count.itemTypeId, (ofLate.get(count.itemTypeId) ?? 0) + count.parcels);
  const types = itemTypes.map(
    (type): ItemTypeChoice => ({
      id: type.id,
      name: type.name,
      massMg: type.massMg,
      recent: ofLate.get(type.id) ?? 0,
    }),
  );
  const held = new Set(corrected?.movements.map((movement) => movement.supplyId));
  const heldTypes =
    corrected?.pieces.filter((piece) => !types.some((type) => type.id === piece.itemTypeId)) ?? [];
  const heldZone = zones.some((zone) => zone.id === corrected?.zoneId) ? null : (corrected?.zoneId ?? null);
  return {
    today,
    timeZone: shop.timeZone,
    measures: shop.measures,
    currency: shop.currency,
    minorDigits: shop.minorDigits,
    defaultStyle: styleFrom(shop.defaultStyle),
    itemTypes: [
      ...types.sort((one, other) => other.recent - one.recent),
      ...heldTypes.map((piece) => ({ id: piece.itemTypeId, name: piece.name, massMg: null, recent: 0 })),
    ],
    supplies: supplies
      .filter((supply) => !supply.retired || held.has(supply.id))
      .map((supply) => supplyChoice(supply, stock, shop.measures)),
    zones: [
      ...zones.map(({ id, name }) => ({ id, name })),
      ...(heldZone === null ? [] : [{ id: heldZone, name: corrected?.zoneName ?? heldZone }]),
    ],
    recipes: recipes.map(recipeVersion),
    likely: likelyChoices(recent.flatMap(recentChoice)),
    substitutes,
    useFirst: await readUseFirst({ db, shop }, { supplies, stock, itemTypes }),
    weights,
    unitPrices: Object.fromEntries(prices),
    stepPrices: await readStepPrices(shopNow, { supplies, itemTypes }),
    steps: promiseSteps(mainCardOn(cards, today)?.card ?? null),
    promiseShare: shop.promisePerMille / 1000,
    newestLine: lastLine,
  };
}

function supplyChoice(supply: Supply, stock: readonly Stock[], measures: Measures): SupplyChoice {
  const known = stock.find((row) => row.supplyId === supply.id);
  return {
    id: supply.id,
    name: supply.name,
    kind: supply.kind,
    unit: supply.useUnit,
    massMg: supply.massMg,
    sizes: supply.kind === "carton" ? cartonSizes(supply, measures) : null,
    onHand: known === undefined || known.countedAt === null ? null : known.amount,
    draft: supply.kind === "carton" ? null : draftSupply(supply),
  };
}

function draftSupply(supply: Supply): SupplyChoice["draft"] {
  const described = describedSupply({ ...supply, bulkUm: null });
  return described.kind === "described" ? described.supply : null;
}

function cartonSizes(supply: Supply, measures: Measures): string | null {
  const { lengthUm, widthUm, heightUm } = supply;
  if (lengthUm === null || widthUm === null || heightUm === null) return null;
  return formatSizes([micrometres(lengthUm), micrometres(widthUm), micrometres(heightUm)], measures);
}

function recipeVersion({ id, itemTypeId, style, effectiveFrom, steps, cartons }: Recipe): RecipeVersion {
  return { id, itemTypeId, style, effectiveFrom, steps, cartons };
}

/** The choice that a parcel of one item type stands for; mixed and voided ones say nothing. */
function recentChoice(parcel: ParcelSummary): (LikelyChoice & { unusual: boolean })[] {
  const [piece, ...others] = parcel.pieces;
  if (piece === undefined || others.length > 0 || parcel.voidedAt !== null || parcel.cartons.length > 1)
    return [];
  return [
    {
      itemTypeId: piece.itemTypeId,
      pieces: piece.pieces,
      style: styleFrom(parcel.style),
      cartonId: parcel.cartons[0]?.supplyId ?? null,
      zoneId: parcel.zoneId,
      unusual: parcel.unusual,
    },
  ];
}
