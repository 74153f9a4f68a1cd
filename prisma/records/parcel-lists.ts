import { type Amount, amount } from "#lib/units/amount";
import type { Database } from "../client";
import type { Prisma } from "../generated/client";
import { type ParcelFilter, parcelWhere } from "./parcel-filter";
import { parcelMaterials } from "./parcel-materials";

/** A parcel as a list shows it. */
export type ParcelSummary = {
  readonly id: string;
  readonly packedOn: string;
  readonly recordedAt: string;
  readonly style: string;
  readonly pieces: readonly {
    readonly itemTypeId: string;
    readonly name: string;
    readonly pieces: number;
    readonly recipeId: string | null;
  }[];
  /** Outermost first; a listed carton's name, or the typed sizes of an odd one. */
  readonly cartons: readonly {
    readonly supplyId: string | null;
    readonly name: string;
    readonly sizesTyped: string | null;
    readonly cutTyped: string | null;
  }[];
  readonly orders: readonly { readonly reference: string; readonly share: number }[];
  readonly zoneId: string | null;
  readonly zoneName: string | null;
  readonly scaleMg: number | null;
  readonly scaleTyped: string | null;
  readonly promisedMg: number | null;
  readonly promisedTyped: string | null;
  readonly postageMinor: number | null;
  readonly postedOn: string | null;
  readonly unusual: boolean;
  readonly voidedAt: string | null;
  readonly voidReason: string | null;
  readonly brokenOn: string | null;
  readonly brokenCause: string | null;
  readonly brokenNote: string | null;
  readonly returnedOn: string | null;
  readonly note: string | null;
  readonly revision: number;
  readonly source: string | null;
  /** Cost of the materials, 1/10,000 minor unit; null where a supply's cost is not known, or nothing of it stands. */
  readonly costValue: number | null;
};

/** One line of a parcel's part of the ledger. */
export type ParcelMovement = {
  readonly id: number;
  readonly supplyId: string;
  readonly supplyName: string;
  readonly useUnit: string;
  /** Signed as in the ledger: use is negative. */
  readonly amount: Amount;
  readonly value: number | null;
  readonly cause: string;
  readonly effectiveAt: string;
  readonly recordedAt: string;
  readonly recordedBy: string;
  readonly typedValue: string | null;
  readonly typedUnit: string | null;
  readonly words: string | null;
  readonly recipeStepId: string | null;
  readonly stepWords: string | null;
  readonly reversesId: number | null;
  readonly reversed: boolean;
};

/** A parcel with its whole trace in the ledger, oldest first. */
export type ParcelDetail = ParcelSummary & { readonly movements: readonly ParcelMovement[] };

/** A page of a list. */
export type ParcelPage = ParcelFilter & {
  readonly limit: number;
  /** Id of the last parcel of the page before. */
  readonly before?: string;
};

const SUMMARY = {
  pieces: { include: { itemType: { select: { name: true } } }, orderBy: { itemTypeId: "asc" } },
  cartons: { include: { supply: { select: { name: true } } }, orderBy: { position: "asc" } },
  orders: { include: { order: { select: { reference: true } } } },
  zone: { select: { name: true } },
} satisfies Prisma.ParcelInclude;

type ParcelRow = Prisma.ParcelGetPayload<{ include: typeof SUMMARY }>;

/** Parcels, the latest packed first. */
export async function parcelsOf(db: Database, page: ParcelPage): Promise<ParcelSummary[]> {
  const { limit, before, ...filter } = page;
  const rows = await db.parcel.findMany({
    where: parcelWhere(db, filter),
    orderBy: [{ packedOn: "desc" }, { recordedAt: "desc" }, { id: "desc" }],
    take: limit,
    ...(before === undefined ? {} : { cursor: { id: before }, skip: 1 }),
    include: SUMMARY,
  });
  const costs = await costsOf(
    db,
    rows.map((row) => row.id),
  );
  return rows.map((row) => summaryFrom(row, costs.get(row.id) ?? null));
}

/** How many parcels fit a filter, voided ones too. */
export async function parcelCount(db: Database, filter: ParcelFilter): Promise<number> {
  return db.parcel.count({ where: parcelWhere(db, filter) });
}

/** One parcel with its movements, or null. */
export async function parcelOf(db: Database, id: string): Promise<ParcelDetail | null> {
  const row = await db.parcel.findUnique({ where: { id }, include: SUMMARY });
  if (row === null) return null;
  const costs = await costsOf(db, [id]);
  const movements = await db.movement.findMany({
    where: { parcelId: id },
    orderBy: { id: "asc" },
    include: {
      supply: { select: { name: true, useUnit: true } },
      recipeStep: { select: { words: true } },
      reversedBy: { select: { id: true } },
    },
  });
  return {
    ...summaryFrom(row, costs.get(id) ?? null),
    movements: movements.map((movement) => ({
      id: movement.id,
      supplyId: movement.supplyId,
      supplyName: movement.supply.name,
      useUnit: movement.supply.useUnit,
      amount: amount(Number(movement.amount)),
      value: movement.value === null ? null : Number(movement.value),
      cause: movement.cause,
      effectiveAt: movement.effectiveAt,
      recordedAt: movement.recordedAt,
      recordedBy: movement.recordedBy,
      typedValue: movement.typedValue,
      typedUnit: movement.typedUnit,
      words: movement.words,
      recipeStepId: movement.recipeStepId,
      stepWords: movement.recipeStep?.words ?? null,
      reversesId: movement.reversesId,
      reversed: movement.reversedBy !== null,
    })),
  };
}

/** How many parcels went out in a span of days, by item type; voided ones are not in it. */
export async function parcelCountsOf(
  db: Database,
  span: { readonly from: string; readonly to: string },
): Promise<
  { itemTypeId: string; style: string; cartonId: string; zoneId: string; parcels: number; pieces: number }[]
> {
  const rows = await db.parcelDay.groupBy({
    by: ["itemTypeId", "style", "cartonId", "zoneId"],
    where: { day: { gte: span.from, lte: span.to } },
    _sum: { parcels: true, pieces: true },
  });
  return rows.map(({ _sum, ...key }) => ({ ...key, parcels: _sum.parcels ?? 0, pieces: _sum.pieces ?? 0 }));
}

/** Of the lines that stand: what a correction took back, known or not, says nothing of the cost. */
async function costsOf(db: Database, parcelIds: string[]): Promise<Map<string, number | null>> {
  const materials = await parcelMaterials(db, parcelIds);
  return new Map(
    [...materials].map(([parcelId, taken]) => [
      parcelId,
      taken.reduce<number | null>(
        (sum, { value }) => (sum === null || value === null ? null : sum + value),
        0,
      ),
    ]),
  );
}

function summaryFrom(row: ParcelRow, costValue: number | null): ParcelSummary {
  const {
    pieces,
    cartons,
    orders,
    zone,
    bodyHash: _hash,
    sourceRef: _ref,
    effectiveAt: _at,
    recordedBy: _by,
    ...columns
  } = row;
  return {
    ...columns,
    zoneName: zone?.name ?? null,
    costValue,
    pieces: pieces.map((part) => ({
      itemTypeId: part.itemTypeId,
      name: part.itemType.name,
      pieces: part.pieces,
      recipeId: part.recipeId,
    })),
    cartons: cartons.map((carton) => ({
      supplyId: carton.supplyId,
      name: carton.supply?.name ?? carton.sizesTyped ?? "",
      sizesTyped: carton.sizesTyped,
      cutTyped: carton.cutTyped,
    })),
    orders: orders.map((order) => ({ reference: order.order.reference, share: order.share })),
  };
}
