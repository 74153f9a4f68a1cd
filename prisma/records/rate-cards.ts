import type { RateCard } from "#lib/postage/rate-card";
import { readRateTable } from "#lib/postage/rate-table";
import { NO_WALLS } from "#lib/postage/size-walls";
import { type Day, day } from "#lib/units/day";
import { type Database, inTransaction } from "../client";
import type { ShopTerms } from "./shop";

/** A rate card as it is kept: its table as typed, and which zone each of its columns is. */
export type KeptRateCard = {
  readonly id: string;
  readonly service: string;
  readonly validFrom: Day;
  readonly validTo: Day | null;
  readonly table: string;
  /** ids of zones, in the order of the table's columns */
  readonly zoneIds: readonly string[];
};

/** A kept card with its prices; the zones of the card are ids. */
export type ReadRateCard = KeptRateCard & { readonly card: RateCard };

/** Raised when cards are written in another way. */
const EDITION = 1;

type CardText = { readonly edition: number; readonly table: string; readonly zoneIds: readonly string[] };

/** How a shop's cards are read. */
type CardTerms = Pick<ShopTerms, "measures" | "minorDigits" | "currency">;

/**
 * The rate cards in use, in the shop's order, those that hold latest first.
 *
 * @param db the database
 * @param terms how the shop writes numbers, and its currency
 * @throws Error if a kept card can't be read any more, which is a fault of the program
 */
export async function rateCardsOf(db: Database, terms: CardTerms): Promise<ReadRateCard[]> {
  const rows = await db.rateCard.findMany({
    where: { retired: false },
    orderBy: [{ position: "asc" }, { service: "asc" }, { validFrom: "desc" }],
  });
  return rows.map((row) => {
    const { edition, table, zoneIds } = JSON.parse(row.card) as CardText;
    if (edition !== EDITION) throw new Error(`The rate card ${row.service} was written by another edition`);
    const kept: KeptRateCard = {
      id: row.id,
      service: row.service,
      validFrom: day(row.validFrom),
      validTo: row.validTo === null ? null : day(row.validTo),
      table,
      zoneIds,
    };
    return { ...kept, card: cardOf(kept, terms) };
  });
}

/**
 * A kept card with its prices.
 *
 * @throws Error if its table can't be read
 */
export function cardOf(kept: Omit<KeptRateCard, "id">, terms: CardTerms): RateCard {
  const table = readRateTable(kept.table, terms);
  if (table.kind === "unreadable") {
    throw new Error(`The rate card ${kept.service} can't be read: ${table.problems.join(" ")}`);
  }
  return {
    service: kept.service,
    currency: terms.currency,
    validFrom: kept.validFrom,
    validTo: kept.validTo,
    zones: kept.zoneIds,
    bands: [
      { name: "", walls: NO_WALLS, countsSize: false, steps: table.steps, beyond: { kind: "notCarried" } },
    ],
    roundUpTo: null,
    dimensional: null,
    fees: [],
  };
}

/** Adds a rate card or saves its changes. */
export async function saveRateCard(db: Database, card: KeptRateCard): Promise<void> {
  const { id, table, zoneIds, ...head } = card;
  const text: CardText = { edition: EDITION, table, zoneIds };
  const data = { ...head, card: JSON.stringify(text), retired: false };
  await inTransaction(db, (tx) =>
    tx.rateCard.upsert({ where: { id }, create: { id, ...data }, update: data }),
  );
}

/** Takes a rate card out of use; parcels keep what they cost. */
export async function retireRateCard(db: Database, id: string): Promise<void> {
  await inTransaction(db, (tx) => tx.rateCard.update({ where: { id }, data: { retired: true } }));
}
