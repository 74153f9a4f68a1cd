import { recipeOn } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { parseLength, parseSizes } from "#lib/units/length";
import { splitMinor } from "#lib/units/money";
import type { Transaction } from "../client";
import { insertRows } from "./insert-rows";
import type { MovementDraft } from "./ledger";
import type { ParcelBody, ParcelCartonUse } from "./parcel-body";
import { recipeHeadsIn } from "./recipes";
import type { ShopTerms } from "./shop";

/** An order number that another parcel already carries: said, never refused. */
export type OrderSeen = {
  readonly kind: "order-seen";
  readonly reference: string;
  readonly parcelId: string;
};

/**
 * The movements of a parcel: one a line, then one a listed carton.
 *
 * @param body the parcel
 * @param effectiveAt instant at which they take effect
 */
export function parcelDrafts(body: ParcelBody, effectiveAt: string): MovementDraft[] {
  const head = {
    cause: "packed" as const,
    effectiveAt,
    effectiveDay: body.packedOn,
    unusual: body.unusual,
    parcelId: body.id,
  };
  const lines = body.lines.map((line) => ({
    ...head,
    supplyId: line.supplyId,
    amount: -BigInt(line.amount),
    recipeStepId: line.recipeStepId,
    typedValue: line.typedValue,
    typedUnit: line.typedUnit,
    words: line.words ?? null,
  }));
  const cartons = body.cartons.flatMap((carton) =>
    carton.supplyId === null
      ? []
      : [
          {
            ...head,
            supplyId: carton.supplyId,
            amount: -BigInt(AMOUNT_PER_UNIT),
            typedValue: "1",
            typedUnit: "each",
          },
        ],
  );
  return [...lines, ...cartons];
}

/**
 * Writes the pieces, cartons and orders of parcels whose own rows are there.
 *
 * @param tx the open transaction
 * @param bodies the parcels
 * @param measures in which sizes without a unit are read
 * @returns the order numbers that a parcel other than these already carries
 */
export async function saveParcelParts(
  tx: Transaction,
  bodies: readonly ParcelBody[],
  { measures }: Pick<ShopTerms, "measures">,
): Promise<OrderSeen[]> {
  const types = new Set(bodies.flatMap((body) => body.pieces.map((part) => part.itemTypeId)));
  const recipes = await recipeHeadsIn(tx, [...types]);
  await insertRows(
    tx,
    "ParcelPiece",
    bodies.flatMap((body) =>
      body.pieces.map((part) => ({
        parcelId: body.id,
        itemTypeId: part.itemTypeId,
        pieces: part.pieces,
        recipeId: recipeOn(recipes, part.itemTypeId, body.style, day(body.packedOn))?.id ?? null,
      })),
    ),
  );
  const cartons = bodies.flatMap((body) =>
    body.cartons.map((carton, position) => ({
      parcelId: body.id,
      position,
      ...cartonColumns(carton, measures),
    })),
  );
  await insertRows(tx, "ParcelCarton", cartons);
  return saveOrders(tx, bodies);
}

function cartonColumns(carton: ParcelCartonUse, measures: ShopTerms["measures"]) {
  const sizes = carton.sizesTyped === undefined ? null : parseSizes(carton.sizesTyped, measures);
  const cut = carton.cutTyped === undefined ? null : parseLength(carton.cutTyped, measures);
  const [lengthUm = null, widthUm = null, heightUm = null] = sizes?.kind === "sizes" ? sizes.um : [];
  return {
    supplyId: carton.supplyId,
    lengthUm,
    widthUm,
    heightUm,
    sizesTyped: carton.sizesTyped ?? null,
    cutHeightUm: cut?.kind === "length" ? cut.um : null,
    cutTyped: carton.cutTyped ?? null,
  };
}

async function saveOrders(tx: Transaction, bodies: readonly ParcelBody[]): Promise<OrderSeen[]> {
  const references = [...new Set(bodies.flatMap((body) => body.orders.map((order) => order.reference)))];
  if (references.length === 0) return [];
  const known = await tx.buyerOrder.findMany({
    where: { reference: { in: references } },
    select: {
      id: true,
      reference: true,
      parcels: {
        select: { parcelId: true },
        where: { parcelId: { notIn: bodies.map((body) => body.id) } },
        take: 1,
      },
    },
  });
  const ids = new Map(known.map((order) => [order.reference, order.id]));
  const fresh = references
    .filter((reference) => !ids.has(reference))
    .map((reference) => ({ id: `order-${reference}`, reference }));
  for (const order of fresh) ids.set(order.reference, order.id);
  await insertRows(tx, "BuyerOrder", fresh);
  await insertRows(
    tx,
    "OrderParcel",
    bodies.flatMap((body) => sharesOf(body, ids)),
  );
  return known.flatMap(({ reference, parcels }) =>
    parcels.map(({ parcelId }) => ({ kind: "order-seen" as const, reference, parcelId })),
  );
}

function sharesOf(body: ParcelBody, orderIds: ReadonlyMap<string, string>) {
  if (body.orders.length === 0) return [];
  const equal = splitMinor(
    AMOUNT_PER_UNIT,
    body.orders.map(() => 1),
  );
  return body.orders.map((order, index) => ({
    orderId: orderIds.get(order.reference) ?? "",
    parcelId: body.id,
    share: order.share ?? equal[index] ?? 0,
  }));
}
