import { randomUUID } from "node:crypto";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { parseLength, parseSizes } from "#lib/units/length";
import { type Database, inTransaction, type Transaction } from "#prisma/client";
import { appendMovements, type Recorder } from "#prisma/records/ledger";
import { type ParcelBody, parcelBodyHash } from "#prisma/records/parcel-body";
import { addParcelToDay } from "#prisma/records/parcel-day";
import { parcelDrafts } from "#prisma/records/parcel-parts";
import { parcelColumns } from "#prisma/records/parcels";

/** A parcel packed today, with the recipe that held for each of its item types. */
export type PackedParcel = {
  readonly body: ParcelBody;
  readonly at: string;
  readonly recipeIds: ReadonlyMap<string, string>;
};

/**
 * Records parcels that were packed one after the other on one day, with nothing in between, in one
 * transaction: what `recordParcel` does for each, in far fewer statements. Only for parcels that are known to
 * be new and to name nothing unknown.
 *
 * @param db - the database
 * @param parcels - parcels of one day, in the order of packing
 * @param by - who records, and when
 * @example await recordParcelsTogether(db, parcels, { device: "demo", now });
 */
export async function recordParcelsTogether(
  db: Database,
  parcels: readonly PackedParcel[],
  by: Recorder,
): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.parcel.createMany({
      data: parcels.map(({ body, at }) => ({
        ...parcelColumns(body),
        id: body.id,
        bodyHash: parcelBodyHash(body),
        effectiveAt: at,
        recordedAt: by.now,
        recordedBy: by.device,
      })),
    });
    await tx.parcelPiece.createMany({ data: parcels.flatMap(pieceRows) });
    await tx.parcelCarton.createMany({ data: parcels.flatMap(({ body }) => cartonRows(body)) });
    await saveOrders(tx, parcels);
    await appendMovements(
      tx,
      parcels.flatMap(({ body, at }) => parcelDrafts(body, at)),
      by,
    );
    for (const { body } of parcels) await addParcelToDay(tx, body, 1);
  });
}

function pieceRows({ body, recipeIds }: PackedParcel) {
  return body.pieces.map((part) => ({
    parcelId: body.id,
    itemTypeId: part.itemTypeId,
    pieces: part.pieces,
    recipeId: recipeIds.get(part.itemTypeId) ?? null,
  }));
}

function cartonRows(body: ParcelBody) {
  return body.cartons.map((carton, position) => {
    const sizes = carton.sizesTyped === undefined ? null : parseSizes(carton.sizesTyped, "imperial");
    const cut = carton.cutTyped === undefined ? null : parseLength(carton.cutTyped, "imperial");
    const [lengthUm = null, widthUm = null, heightUm = null] = sizes?.kind === "sizes" ? sizes.um : [];
    return {
      parcelId: body.id,
      position,
      supplyId: carton.supplyId,
      lengthUm,
      widthUm,
      heightUm,
      sizesTyped: carton.sizesTyped ?? null,
      cutHeightUm: cut?.kind === "length" ? cut.um : null,
      cutTyped: carton.cutTyped ?? null,
    };
  });
}

async function saveOrders(tx: Transaction, parcels: readonly PackedParcel[]): Promise<void> {
  const references = [...new Set(parcels.flatMap(({ body }) => body.orders.map((order) => order.reference)))];
  const known = await tx.buyerOrder.findMany({ where: { reference: { in: references } } });
  const ids = new Map(known.map((order) => [order.reference, order.id]));
  const fresh = references
    .filter((reference) => !ids.has(reference))
    .map((reference) => ({ id: randomUUID(), reference }));
  for (const order of fresh) ids.set(order.reference, order.id);
  await tx.buyerOrder.createMany({ data: fresh });
  await tx.orderParcel.createMany({
    data: parcels.flatMap(({ body }) =>
      body.orders.map((order) => ({
        orderId: ids.get(order.reference) ?? "",
        parcelId: body.id,
        share: order.share ?? AMOUNT_PER_UNIT / body.orders.length,
      })),
    ),
  });
}
