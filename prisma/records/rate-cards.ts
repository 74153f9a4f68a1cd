import type { SourcedCard } from "#lib/postage/card-rows/card-row";
import { cardRows } from "#lib/postage/card-rows/card-rows";
import { readCardRows } from "#lib/postage/card-rows/read-card-rows";
import type { RateCard } from "#lib/postage/rate-card";
import { readRateTable } from "#lib/postage/rate-table";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import type { Measures } from "#lib/units/measures";
import { type Database, inTransaction, type Transaction } from "../client";
import type { RateCardModel } from "../generated/models/RateCard";
import type { ShopTerms } from "./shop";

/** A rate card as it is kept; its zones are ids. */
export type KeptRateCard = SourcedCard & { readonly id: string };

/** A kept card with its head at hand. */
export type ReadRateCard = KeptRateCard & Pick<RateCard, "service" | "validFrom" | "validTo">;

/** How a shop's cards are written and read. */
export type CardTerms = Pick<ShopTerms, "measures" | "minorDigits" | "currency">;

/** Raised when cards are written in another way; the first edition was a table as typed. */
const EDITION = 2;

type CardText =
  | { readonly edition: 1; readonly table: string; readonly zoneIds: readonly string[] }
  | {
      readonly edition: 2;
      /** how the numbers of the rows are meant: the shop's may change */
      readonly measures: Measures;
      readonly currency: string;
      readonly rows: readonly (readonly string[])[];
    };

/**
 * The rate cards in use: the shop's main service first, of each service those that hold latest first.
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
    const sourced = sourcedCard(row, terms);
    const { service, validFrom, validTo } = sourced.card;
    return { id: row.id, service, validFrom, validTo, ...sourced };
  });
}

function sourcedCard(row: RateCardModel, terms: CardTerms): SourcedCard {
  const text = JSON.parse(row.card) as CardText;
  switch (text.edition) {
    case 1:
      return { card: typedTable(row, text, terms), source: null, readOn: null };
    case EDITION: {
      const rows = text.rows.map((cells, at) => ({ line: at + 1, cells }));
      const read = readCardRows(rows, { ...text, zones: null });
      const [card] = read.kind === "cards" ? read.cards : [];
      if (card === undefined) throw unreadable(row.service, JSON.stringify(read));
      return { card: card.card, source: card.source, readOn: card.readOn };
    }
    default:
      throw unreadable(row.service, "it was written by another edition");
  }
}

/** A card of the first edition. An empty cell of its table had no price. */
function typedTable(
  row: RateCardModel,
  text: Extract<CardText, { readonly edition: 1 }>,
  { measures, minorDigits, currency }: CardTerms,
): RateCard {
  const table = readRateTable(text.table, { measures, minorDigits, blanks: "noPrice" });
  if (table.kind === "unreadable") throw unreadable(row.service, table.problems.join(" "));
  const { steps, beyond } = table;
  return {
    service: row.service,
    currency,
    validFrom: day(row.validFrom),
    validTo: row.validTo === null ? null : day(row.validTo),
    zones: text.zoneIds,
    bands: [{ name: "", walls: NO_WALLS, countsSize: true, steps, beyond }],
    roundUpTo: null,
    dimensional: null,
    fees: [],
  };
}

function unreadable(service: string, why: string): Error {
  return new Error(`The rate card ${service} can't be read: ${why}`);
}

/**
 * Adds rate cards or saves their changes: all of them or none. A new service comes after those that are there.
 *
 * @param db the database
 * @param cards cards without faults, their zones ids
 * @param terms how the shop writes numbers
 */
export async function saveRateCards(
  db: Database,
  cards: readonly KeptRateCard[],
  { measures }: Pick<CardTerms, "measures">,
): Promise<void> {
  await inTransaction(db, async (tx) => {
    for (const { id, ...sourced } of cards) {
      const { service, validFrom, validTo, currency } = sourced.card;
      const text: CardText = { edition: EDITION, measures, currency, rows: cardRows([sourced]) };
      const position = await positionOf(tx, service);
      const data = { service, validFrom, validTo, position, card: JSON.stringify(text), retired: false };
      await tx.rateCard.upsert({ where: { id }, create: { id, ...data }, update: data });
    }
  });
}

async function positionOf(tx: Transaction, service: string): Promise<number> {
  const own = await tx.rateCard.findFirst({
    where: { service, retired: false },
    select: { position: true },
    orderBy: { position: "asc" },
  });
  if (own !== null) return own.position;
  const { _max } = await tx.rateCard.aggregate({ where: { retired: false }, _max: { position: true } });
  return (_max.position ?? -1) + 1;
}

/** Makes a service the shop's main one: what is listed and packed is reckoned by it. */
export async function putServiceFirst(db: Database, service: string): Promise<void> {
  await inTransaction(db, async (tx) => {
    const { _min } = await tx.rateCard.aggregate({ where: { retired: false }, _min: { position: true } });
    await tx.rateCard.updateMany({ where: { service }, data: { position: (_min.position ?? 0) - 1 } });
  });
}

/** Takes a rate card out of use; parcels keep what they cost. */
export async function retireRateCard(db: Database, id: string): Promise<void> {
  await inTransaction(db, (tx) => tx.rateCard.update({ where: { id }, data: { retired: true } }));
}
