import Database from "better-sqlite3";

type Booked = {
  readonly parcels: number;
  readonly amongThem: number;
  readonly reversals: number;
  /** Sum of movements by supply, 1/12,000 use unit. */
  readonly use: Readonly<Record<string, number>>;
};

/** What the book says, read from the database itself. */
export function booked(file: string, keys: ReadonlySet<string>): Booked {
  const db = new Database(file, { readonly: true });
  try {
    const ids = db.prepare<[], { id: string }>('SELECT "id" FROM "Parcel"').all();
    const moved = db
      .prepare<[], { supplyId: string; amount: number }>(
        'SELECT "supplyId", SUM("amount") AS "amount" FROM "Movement" GROUP BY "supplyId"',
      )
      .all();
    const reversed = db
      .prepare<[], { count: number }>(
        'SELECT COUNT(*) AS "count" FROM "Movement" WHERE "reversesId" IS NOT NULL',
      )
      .get();
    return {
      parcels: ids.length,
      amongThem: ids.filter(({ id }) => keys.has(id)).length,
      reversals: reversed?.count ?? 0,
      use: Object.fromEntries(moved.map(({ supplyId, amount }) => [supplyId, amount])),
    };
  } finally {
    db.close();
  }
}

/** What changed between two looks at the book. */
export function differences(after: Booked["use"], before: Booked["use"]): Record<string, number> {
  const changed = Object.entries(after).map(([id, amount]) => [id, amount - (before[id] ?? 0)] as const);
  return Object.fromEntries(changed.filter(([, amount]) => amount !== 0));
}

const ONE = 12_000;

/** What parcels take from the shelf, added up from what was sent: their lines, and one of each carton. */
export function useOf(bodies: readonly string[]): Record<string, number> {
  const use: Record<string, number> = {};
  const take = (supplyId: string, amount: number): void => {
    use[supplyId] = (use[supplyId] ?? 0) - amount;
  };
  for (const body of bodies) {
    const { lines, cartons } = JSON.parse(body) as {
      lines: { supplyId: string; amount: number }[];
      cartons: { supplyId: string }[];
    };
    for (const line of lines) take(line.supplyId, line.amount);
    for (const carton of cartons) take(carton.supplyId, ONE);
  }
  return use;
}
