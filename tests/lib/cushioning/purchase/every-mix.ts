import type { MixOffer, MixQuestion } from "#lib/cushioning/purchase/mix-question";

/** What the best of all mixes comes to. */
export type BestMix = { readonly parcels: number; readonly share: number; readonly totalMinor: number };

const TINY = 1e-7;

/**
 * The best mix of a small question, by trying every number of packs of every offer, and for each of them every corner
 * of the parcels' split. The split is linear: parcels by type and way, with stock, parcels and what is kept as straight
 * limits; the least of parcels unpacked, then of what is below, then of cost lies in a corner of these. No code of the
 * program is used. Offers need a most number of packs.
 */
export function everyMix(question: MixQuestion): BestMix {
  let best: BestMix | null = null;
  for (const packs of everyPacks(question.offers)) {
    const spent = spentOn(question, packs);
    if (spent === null) continue;
    const stock = question.supplies.map(({ id, onHand }) =>
      question.offers.reduce(
        (sum, { supplyId, unitsPerPack }, index) =>
          supplyId === id ? sum + unitsPerPack * (packs[index] ?? 0) : sum,
        onHand,
      ),
    );
    if (!hasRoom(question, stock)) continue;
    best = bestSplit(question, stock, spent, best);
  }
  if (best === null) throw new RangeError("everyMix requires a question in which nothing may be bought");
  return best;
}

function* everyPacks(offers: readonly MixOffer[], from = 0): Generator<number[]> {
  const offer = offers[from];
  if (offer === undefined) {
    yield [];
    return;
  }
  if (offer.mostPacks === null) throw new RangeError(`everyMix requires most packs of ${offer.id}`);
  for (let count = 0; count <= offer.mostPacks; count++) {
    if (count > 0 && count < (offer.steps?.[0]?.fromPacks ?? 1)) continue;
    for (const rest of everyPacks(offers, from + 1)) yield [count, ...rest];
  }
}

function priceOf({ steps, kind }: MixOffer, packs: number): number {
  let sum = 0;
  for (let pack = 1; pack <= packs; pack++) {
    const reached = kind === "all-units" ? packs : pack;
    const step = (steps ?? []).filter(({ fromPacks }) => fromPacks <= reached).at(-1);
    sum += step?.priceMinor ?? Number.NaN;
  }
  return sum;
}

/** Goods and delivery; null where an order is below the least or the cash does not suffice. */
function spentOn({ suppliers, offers, limits }: MixQuestion, packs: readonly number[]): number | null {
  let spent = 0;
  for (const { id, deliveryMinor, freeFromMinor, leastOrderMinor } of suppliers) {
    let goods = 0;
    let ordered = 0;
    offers.forEach((offer, index) => {
      if (offer.supplierId !== id) return;
      goods += priceOf(offer, packs[index] ?? 0);
      ordered += packs[index] ?? 0;
    });
    if (ordered === 0) continue;
    if (leastOrderMinor !== null && goods < leastOrderMinor) return null;
    spent += goods + (freeFromMinor !== null && goods >= freeFromMinor ? 0 : deliveryMinor);
  }
  return limits.cashMinor !== null && spent > limits.cashMinor ? null : spent;
}

function hasRoom({ supplies, limits }: MixQuestion, stock: readonly number[]): boolean {
  if (limits.litres === null) return true;
  const sum = (units: readonly number[]) =>
    supplies.reduce((total, { litresPerUnit }, index) => total + litresPerUnit * (units[index] ?? 0), 0);
  return sum(stock) <= Math.max(limits.litres, sum(supplies.map(({ onHand }) => onHand))) + TINY;
}

/** A straight limit: factors of the parcels by type and way, and what they come to on it. */
type Wall = { readonly factors: readonly number[]; readonly level: number };

function bestSplit(
  question: MixQuestion,
  stock: readonly number[],
  spent: number,
  known: BestMix | null,
): BestMix {
  const ways = question.types.flatMap((type, at) => type.ways.map((way) => ({ way, type: at })));
  const parcels = question.types.map(
    (type, at): Wall => ({
      factors: ways.map((each) => (each.type === at ? 1 : 0)),
      level: type.parcels,
    }),
  );
  const taken = question.supplies.map(
    ({ id }, index): Wall => ({
      factors: ways.map(({ way }) => way.takes.find(({ supplyId }) => supplyId === id)?.units ?? 0),
      level: stock[index] ?? 0,
    }),
  );
  const kept = question.supplies.flatMap(({ keep }, index): Wall[] => {
    const wall = taken[index];
    return wall === undefined || keep === 0 || wall.level < keep
      ? []
      : [{ ...wall, level: wall.level - keep }];
  });
  // Where no more of what is left counts, the worth has a kink.
  const kinks = question.supplies.flatMap(({ worthUpTo }, index): Wall[] => {
    const wall = taken[index];
    return wall === undefined || !(wall.level > worthUpTo)
      ? []
      : [{ ...wall, level: wall.level - worthUpTo }];
  });
  const none = ways.map(
    (_, at): Wall => ({ factors: ways.map((__, other) => (at === other ? 1 : 0)), level: 0 }),
  );
  let best = known;
  for (const corner of corners([...none, ...parcels, ...taken, ...kept, ...kinks], ways.length)) {
    const isInside =
      corner.every((each) => each >= -TINY) &&
      [...parcels, ...taken].every((wall) => along(wall, corner) <= wall.level + TINY);
    if (!isInside) continue;
    const mix = mixAt(question, corner, { ways, parcels, taken }, spent);
    if (best === null || isBetter(mix, best)) best = mix;
  }
  if (best === null) throw new RangeError("everyMix requires a split, and packing nothing is one");
  return best;
}

const along = ({ factors }: Wall, at: readonly number[]): number =>
  factors.reduce((sum, factor, index) => sum + factor * (at[index] ?? 0), 0);

function mixAt(
  question: MixQuestion,
  at: readonly number[],
  walls: {
    readonly ways: readonly { readonly way: { readonly sendMinor: number; readonly otherMinor: number } }[];
    readonly parcels: readonly Wall[];
    readonly taken: readonly Wall[];
  },
  spent: number,
): BestMix {
  const parcels = walls.parcels.reduce((sum, wall) => sum + Math.max(0, wall.level - along(wall, at)), 0);
  let totalMinor = spent;
  walls.ways.forEach(({ way }, index) => {
    totalMinor += (way.sendMinor + way.otherMinor) * (at[index] ?? 0);
  });
  let share = 0;
  question.supplies.forEach(({ keep, leftMinor, worthUpTo }, index) => {
    const wall = walls.taken[index];
    if (wall === undefined) return;
    const left = Math.max(0, wall.level - along(wall, at));
    totalMinor -= leftMinor * Math.min(left, worthUpTo);
    if (keep > 0) share += Math.max(0, keep - left) / keep;
  });
  return { parcels, share, totalMinor };
}

function isBetter(one: BestMix, other: BestMix): boolean {
  if (Math.abs(one.parcels - other.parcels) > TINY) return one.parcels < other.parcels;
  if (Math.abs(one.share - other.share) > TINY) return one.share < other.share;
  return one.totalMinor < other.totalMinor;
}

/** Where so many walls meet in one point, for every choice of walls. */
function* corners(
  walls: readonly Wall[],
  size: number,
  chosen: readonly Wall[] = [],
  from = 0,
): Generator<number[]> {
  if (chosen.length === size) {
    const point = meeting(chosen);
    if (point !== null) yield point;
    return;
  }
  for (let index = from; index <= walls.length - (size - chosen.length); index++) {
    const wall = walls[index];
    if (wall !== undefined) yield* corners(walls, size, [...chosen, wall], index + 1);
  }
}

/** Gauss with the largest pivot; null where the walls do not meet in one point. */
function meeting(walls: readonly Wall[]): number[] | null {
  const rows = walls.map(({ factors, level }) => Float64Array.from([...factors, level]));
  for (let column = 0; column < walls.length; column++) {
    const top = withLargest(rows, column);
    if (top === null) return null;
    for (const row of rows) if (row !== top) subtract(row, top, column);
  }
  return rows.map((row, index) => (row[walls.length] ?? 0) / (row[index] ?? 1));
}

/** Brings the row with the largest entry of a column to its place; null where all are nothing. */
function withLargest(rows: Float64Array[], column: number): Float64Array | null {
  const size = (row: number) => Math.abs(rows[row]?.[column] ?? 0);
  let pivot = column;
  for (let row = column + 1; row < rows.length; row++) if (size(row) > size(pivot)) pivot = row;
  const top = rows[pivot];
  const swapped = rows[column];
  if (top === undefined || swapped === undefined || size(pivot) < 1e-9) return null;
  rows[pivot] = swapped;
  rows[column] = top;
  return top;
}

function subtract(row: Float64Array, top: Float64Array, column: number): void {
  const factor = (row[column] ?? 0) / (top[column] ?? 1);
  if (factor === 0) return;
  for (let index = column; index < row.length; index++) {
    row[index] = (row[index] ?? 0) - factor * (top[index] ?? 0);
  }
}
