/** Something that moved a supply, amount below 0 where it left the shelf. */
export type ToldMove = { readonly supplyId: string; readonly at: string; readonly amount: number };

/** A parcel in force: what it took, and what the day roll-up should know of it. */
export type ToldParcel = {
  readonly moves: readonly ToldMove[];
  readonly packedOn: string;
  readonly pieces: number;
};

/** What was told to the books, in plain values, apart from the ledger. */
export type ToldStock = {
  readonly parcels: Map<string, ToldParcel>;
  /** Receipts, losses and returns by the number of their movement. */
  readonly others: Map<number, ToldMove>;
  readonly counts: ToldMove[];
};

/**
 * On hand as the rules say it: the latest count, and what took effect after it.
 *
 * @param told all that was told
 * @param supplyId the supply
 * @returns amount in 1/12,000 use unit
 */
export function toldOnHand(told: ToldStock, supplyId: string): number {
  const counts = told.counts.filter((count) => count.supplyId === supplyId);
  const latest = counts.reduce<ToldMove | null>(
    (best, count) => (best === null || count.at >= best.at ? count : best),
    null,
  );
  const moves = [...[...told.parcels.values()].flatMap((parcel) => parcel.moves), ...told.others.values()];
  return moves
    .filter((move) => move.supplyId === supplyId && (latest === null || move.at > latest.at))
    .reduce((sum, move) => sum + move.amount, latest?.amount ?? 0);
}

/** Parcels and pieces in force by the day packed, oldest first. */
export function toldDays(told: ToldStock): { day: string; parcels: number; pieces: number }[] {
  const days = new Map<string, { parcels: number; pieces: number }>();
  for (const { packedOn, pieces } of told.parcels.values()) {
    const before = days.get(packedOn) ?? { parcels: 0, pieces: 0 };
    days.set(packedOn, { parcels: before.parcels + 1, pieces: before.pieces + pieces });
  }
  return [...days].map(([day, sums]) => ({ day, ...sums })).sort((a, b) => (a.day < b.day ? -1 : 1));
}
