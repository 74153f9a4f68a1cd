import type { Transaction } from "../client";
import { Prisma } from "../generated/client";

/** Tables that the bench writes to with every parcel, and the columns that a row of each gives. */
type Rows = {
  readonly Movement: Prisma.MovementUncheckedCreateInput;
  readonly Parcel: Prisma.ParcelUncheckedCreateInput;
  readonly ParcelPiece: Prisma.ParcelPieceUncheckedCreateInput;
  readonly ParcelCarton: Prisma.ParcelCartonUncheckedCreateInput;
  readonly BuyerOrder: Prisma.BuyerOrderUncheckedCreateInput;
  readonly OrderParcel: Prisma.OrderParcelUncheckedCreateInput;
};

/** SQLite takes 32,766 values in one statement. */
const MOST_VALUES = 30_000;

/**
 * Inserts rows with one statement, which takes a quarter of the time of the client's own `createMany`: a
 * parcel is recorded while its packer waits.
 *
 * @param tx the open transaction
 * @param table name of the table
 * @param rows all with the same columns; what is undefined goes in as null
 */
export async function insertRows<Table extends keyof Rows>(
  tx: Transaction,
  table: Table,
  rows: readonly Rows[Table][],
): Promise<void> {
  const [first] = rows;
  if (first === undefined) return;
  const columns = Object.keys(first);
  const names = Prisma.join(columns.map((column) => Prisma.raw(`"${column}"`)));
  const atOnce = Math.floor(MOST_VALUES / columns.length);
  for (let from = 0; from < rows.length; from += atOnce) {
    const values = rows.slice(from, from + atOnce).map((row) => {
      const cells = new Map(Object.entries(row));
      return Prisma.sql`(${Prisma.join(columns.map((column) => cells.get(column) ?? null))})`;
    });
    await tx.$executeRaw`INSERT INTO ${Prisma.raw(`"${table}"`)} (${names}) VALUES ${Prisma.join(values)}`;
  }
}
