import { recipeOn } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { parseLength, parseSizes } from "#lib/units/length";
import { splitMinor } from "#lib/units/money";
import type { Transaction } from "../client";
import type { MovementDraft } from "./ledger";
import type { ParcelBody } from "./parcel-body";
import { recipeHeadsIn } from "./recipes";

/** An order number that another parcel already carries: said, never refused. */
export type OrderSeen = {
  readonly kind: "order-seen";
  readonly reference: string;
  readonly parcelId: string;
};

/**
 * The first thing that a parcel names and the shop does not know.
 *
 * @returns the field and the id, or null when all are known
 */
export async function unknownReference(
  tx: Transaction,
  body: ParcelBody,
): Promise<{ kind: "unknown"; field: string; id: string } | null> {
  const typeIds = body.pieces.map((part) => part.itemTypeId);
  const supplyIds = [
    ...body.lines.map((line) => line.supplyId),
    ...body.cartons.flatMap((carton) => (carton.supplyId === null ? [] : [carton.supplyId])),
  ];
  const types = await tx.itemType.findMany({ where: { id: { in: typeIds } }, select: { id: true } });
  const supplies = await tx.supply.findMany({ where: { id: { in: supplyIds } }, select: { id: true } });
  const type = typeIds.find((id) => !types.some((row) => row.id === id));
  if (type !== undefined) return { kind: "unknown", field: "pieces.itemTypeId", id: type };
  const supply = supplyIds.find((id) => !supplies.some((row) => row.id === id));
  if (supply !== undefined) return { kind: "unknown", field: "lines.supplyId", id: supply };
  if (body.zoneId !== null && (await tx.zone.findUnique({ where: { id: body.zoneId } })) === null) {
    return { kind: "unknown", field: "zoneId", id: body.zoneId };
  }
  const stepIds = body.lines.flatMap((line) => (line.recipeStepId === null ? [] : [line.recipeStepId]));
  const steps = await tx.recipeStep.findMany({ where: { id: { in: stepIds } }, select: { id: true } });
  const step = stepIds.find((id) => !steps.some((row) => row.id === id));
  return step === undefined ? null : { kind: "unknown", field: "lines.recipeStepId", id: step };
}

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
 * Writes a parcel's pieces, cartons and orders.
 *
 * @returns the order numbers that another parcel already carries
 */
export async function saveParcelParts(tx: Transaction, body: ParcelBody): Promise<OrderSeen[]> {
  const recipes = await recipeHeadsIn(
    tx,
    body.pieces.map((part) => part.itemTypeId),
    body.style,
  );
  await tx.parcelPiece.createMany({
    data: body.pieces.map((part) => ({
      parcelId: body.id,
      itemTypeId: part.itemTypeId,
      pieces: part.pieces,
      recipeId: recipeOn(recipes, part.itemTypeId, body.style, day(body.packedOn))?.id ?? null,
    })),
  });
  if (body.cartons.length > 0) {
    await tx.parcelCarton.createMany({
      data: body.cartons.map((carton, position) => cartonRow(body.id, carton, position)),
    });
  }
  return saveOrders(tx, body);
}

function cartonRow(parcelId: string, carton: ParcelBody["cartons"][number], position: number) {
  const sizes = carton.sizesTyped === undefined ? null : parseSizes(carton.sizesTyped, "imperial");
  const cut = carton.cutTyped === undefined ? null : parseLength(carton.cutTyped, "imperial");
  const [lengthUm = null, widthUm = null, heightUm = null] = sizes?.kind === "sizes" ? sizes.um : [];
  return {
    parcelId,
    position,
    supplyId: carton.supplyId,
    lengthUm,
    widthUm,
    heightUm,
    sizesTyped: carton.sizesTyped ?? null,
    cutHeightUm: cut?.kind === "length" ? cut.um : null,
    cutTyped: carton.cutTyped ?? null,
  };
}

async function saveOrders(tx: Transaction, body: ParcelBody): Promise<OrderSeen[]> {
  if (body.orders.length === 0) return [];
  const equal = splitMinor(
    AMOUNT_PER_UNIT,
    body.orders.map(() => 1),
  );
  const warnings: OrderSeen[] = [];
  for (const [index, order] of body.orders.entries()) {
    const known = await tx.buyerOrder.findUnique({
      where: { reference: order.reference },
      select: {
        id: true,
        parcels: { select: { parcelId: true }, where: { parcelId: { not: body.id } }, take: 1 },
      },
    });
    const seen = known?.parcels[0];
    if (seen !== undefined)
      warnings.push({ kind: "order-seen", reference: order.reference, parcelId: seen.parcelId });
    const share = order.share ?? equal[index] ?? 0;
    const orderId = known?.id ?? `order-${order.reference}`;
    if (known === null) await tx.buyerOrder.create({ data: { id: orderId, reference: order.reference } });
    await tx.orderParcel.create({ data: { orderId, parcelId: body.id, share } });
  }
  return warnings;
}
