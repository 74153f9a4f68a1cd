import { randomUUID } from "node:crypto";
import { cardRows } from "#lib/postage/card-rows/card-rows";
import { readCardRows } from "#lib/postage/card-rows/read-card-rows";
import type { KeptRateCard, ReadRateCard } from "#prisma/records/rate-cards";
import type { Shop } from "#prisma/records/shop";
import type { Zone } from "#prisma/records/zones";
import { csvRowsOf } from "./csv-rows-of";
import { MOST_CARD_BYTES } from "./most-card-bytes";
import { overlapProblem } from "./overlap-problem";
import { withZoneIds } from "./rate-card-form";

/** Cards to be kept, or what is wrong with which field. */
export type ImportedCards =
  | { readonly kind: "cards"; readonly cards: readonly KeptRateCard[]; readonly words: string }
  | { readonly kind: "unreadable"; readonly field: "file" | "rows"; readonly words: string };

const MOST_PROBLEMS = 8;

type ImportGround = {
  readonly shop: Pick<Shop, "measures" | "currency">;
  readonly zones: readonly Zone[];
  readonly kept: readonly ReadRateCard[];
};

/**
 * Reads the cards of a file or of pasted rows. A card that is kept already, word for word, is left as it is.
 *
 * @param form with a file, or with rows as text; with `cardId` the one card takes the place of that one
 * @param ground the shop, its zones and the cards that are kept
 */
export async function importedCards(
  form: FormData,
  { shop, zones, kept }: ImportGround,
): Promise<ImportedCards> {
  const sent = await sentBytes(form);
  const { field } = sent;
  const refusal = (words: string): ImportedCards => ({ kind: "unreadable", field, words });
  if ("words" in sent) return refusal(sent.words);
  const csv = csvRowsOf(sent.bytes);
  if (csv.kind === "unreadable") return refusal(csv.words);
  const names = zones.map(({ name }) => name);
  const read = readCardRows(csv.rows, { measures: shop.measures, currency: shop.currency, zones: names });
  if (read.kind === "unreadable") return refusal(problemWords(read.problems));
  const cardId = form.get("cardId");
  const changed = typeof cardId === "string" && cardId !== "" ? cardId : null;
  if (changed !== null && read.cards.length !== 1) {
    return refusal(
      `There are ${read.cards.length} cards in these rows, and one is changed here. Leave one, or import them as a file.`,
    );
  }
  const cards = read.cards.map(({ line, ...sourced }) => ({
    line,
    id: changed ?? randomUUID(),
    ...withZoneIds(sourced, zones),
  }));
  const fresh = cards.filter((card) => !kept.some((each) => isSame(card, each)));
  const days = fresh.map(({ id, line, card }) => ({ ...card, id, line }));
  const problems = days.flatMap((card, at) => {
    const words = overlapProblem(card, [...kept, ...days.slice(0, at)]);
    return words === null ? [] : [{ line: card.line, words }];
  });
  if (problems.length > 0) return refusal(problemWords(problems));
  return {
    kind: "cards",
    cards: fresh.map(({ line: _, ...card }) => card),
    words: doneWords(fresh.length, cards.length - fresh.length),
  };
}

type Sent = { readonly field: "file" | "rows" } & (
  | { readonly bytes: Uint8Array }
  | { readonly words: string }
);

async function sentBytes(form: FormData): Promise<Sent> {
  const [file, rows] = [form.get("file"), form.get("rows")];
  const isFile = file instanceof File && file.size > 0;
  const field = isFile || rows === null ? "file" : "rows";
  const text = typeof rows === "string" ? rows.trim() : "";
  if (!isFile && text === "") return { field, words: "Choose a CSV file of cards, or paste its rows." };
  const bytes = isFile ? new Uint8Array(await file.arrayBuffer()) : new TextEncoder().encode(text);
  return bytes.length > MOST_CARD_BYTES
    ? { field, words: "That is far more than cards take. Choose the file of cards." }
    : { field, bytes };
}

function isSame(one: Omit<KeptRateCard, "id">, other: Omit<KeptRateCard, "id">): boolean {
  return JSON.stringify(cardRows([one])) === JSON.stringify(cardRows([other]));
}

function problemWords(problems: readonly { readonly line: number; readonly words: string }[]): string {
  const told = problems.slice(0, MOST_PROBLEMS).map(({ line, words }) => `Row ${line}: ${words}`);
  const more = problems.length - told.length;
  return [...told, ...(more > 0 ? [`And ${more} more.`] : []), "Nothing was kept."].join(" ");
}

function doneWords(kept: number, same: number): string {
  const count = (cards: number) => `${cards} ${cards === 1 ? "card" : "cards"}`;
  const were = same === 0 ? "" : ` ${count(same)} ${same === 1 ? "was" : "were"} there already.`;
  return `${count(kept)} ${kept === 1 ? "is" : "are"} kept.${were}`;
}
