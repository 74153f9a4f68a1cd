import { randomUUID } from "node:crypto";
import type { Amount } from "#lib/units/amount";
import { parseAmount } from "#lib/units/amount-text";
import { endOfDay, type Instant } from "#lib/units/instant";
import { parseMass } from "#lib/units/mass";
import type { Database } from "#prisma/client";
import { saveClosedSpan } from "#prisma/records/closed-spans";
import { recordCount } from "#prisma/records/counts";
import { saveItemType } from "#prisma/records/item-types";
import { savePlannedEvent } from "#prisma/records/planned-events";
import { recordReceipt } from "#prisma/records/receipts";
import { saveRecipe } from "#prisma/records/recipes";
import { saveShop } from "#prisma/records/shop";
import { closedOf, roomOf, shopOfFile, supplierOfFile } from "#prisma/records/shop-file-buying";
import { readShopFile, type ShopFileProblem } from "#prisma/records/shop-file-problems";
import type { ShopFile } from "#prisma/records/shop-file-schema";
import { supplyOfShopFile } from "#prisma/records/shop-file-supply";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { saveSupply } from "#prisma/records/supplies";
import { saveZone } from "#prisma/records/zones";

/** What came of loading a shop file. */
export type ShopFileOutcome =
  | { readonly kind: "loaded" }
  | { readonly kind: "not-empty" }
  | { readonly kind: "unreadable"; readonly problems: readonly ShopFileProblem[] };

type Load = { readonly db: Database; readonly file: ShopFile; readonly by: { device: string; now: Instant } };

/**
 * Loads a whole shop without its parcels from a file into a database that has no shop yet. Counts take
 * effect at the end of their day.
 *
 * @param db - an empty, migrated database
 * @param json - the parsed file
 * @param at.now - the instant of recording
 * @returns loaded, or why nothing was
 * @throws RangeError if a record refuses what the file's checks let through
 * @example await loadShopFile(db, JSON.parse(text), { now });
 */
export async function loadShopFile(
  db: Database,
  json: unknown,
  at: { readonly now: Instant },
): Promise<ShopFileOutcome> {
  const reading = readShopFile(json);
  if (reading.kind === "unreadable") return reading;
  if ((await db.shop.count()) > 0 || (await db.supply.count()) > 0) return { kind: "not-empty" };
  const load: Load = { db, file: reading.file, by: { device: "shop file", now: at.now } };
  await saveShop(db, shopOfFile(reading.file));
  await loadPlaces(load);
  await loadBuying(load);
  await loadItemTypes(load);
  await loadEvents(load);
  await loadStock(load);
  return { kind: "loaded" };
}

async function loadPlaces({ db, file }: Load): Promise<void> {
  for (const [position, zone] of file.zones.entries()) {
    await saveZone(db, { ...zone, retired: false, position });
  }
  for (const span of file.closed) {
    await saveClosedSpan(db, { id: randomUUID(), fromDay: span.from, toDay: span.to, words: span.words });
  }
}

async function loadBuying({ db, file }: Load): Promise<void> {
  for (const [position, supply] of file.supplies.entries()) {
    await saveSupply(db, supplyOfShopFile(supply, position, file.shop.measures));
  }
  for (const supplier of file.suppliers) await saveSupplier(db, supplierOfFile(supplier), closedOf(supplier));
  for (const offer of file.offers) {
    const room = roomOf(offer.room, file.shop.measures);
    await saveOffer(db, {
      id: offer.id,
      supplyId: offer.supply,
      supplierId: offer.supplier,
      pack: offer.pack,
      packAmount: amountIn(file, offer.supply, offer.packAmount).amount,
      packTyped: offer.pack,
      priceMinor: offer.price,
      retired: false,
      breakKind: offer.breakKind ?? "all-units",
      volumeMl: room.ml,
      volumeTyped: room.typed,
      breaks: (offer.breaks ?? []).map((row) => ({ fromPacks: row.fromPacks, priceMinor: row.price })),
    });
  }
}

async function loadItemTypes({ db, file, by }: Load): Promise<void> {
  for (const [position, type] of file.itemTypes.entries()) {
    const mass = type.mass === undefined ? null : parseMass(type.mass, file.shop.measures);
    await saveItemType(db, {
      id: type.id,
      name: type.name,
      massMg: mass?.kind === "mass" ? mass.mg : null,
      massTyped: type.mass ?? null,
      lengthUm: null,
      widthUm: null,
      heightUm: null,
      sizesTyped: null,
      note: null,
      retired: false,
      position,
    });
    for (const recipe of type.recipes) {
      const version = {
        id: randomUUID(),
        itemTypeId: type.id,
        style: recipe.style,
        effectiveFrom: recipe.from,
        commonPractice: false,
        note: null,
        steps: recipe.steps.map((step, index) => ({
          id: randomUUID(),
          position: index,
          words: step.words,
          supplyId: step.supply,
          ...amountIn(file, step.supply, step.amount),
          per: step.per,
        })),
        cartons: recipe.cartons.map((carton) => ({ upTo: carton.upTo, supplyId: carton.supply })),
      };
      required(await saveRecipe(db, version, by.now), "saved");
    }
  }
}

async function loadEvents({ db, file }: Load): Promise<void> {
  for (const { from, to, itemTypes, ...event } of file.events) {
    await savePlannedEvent(db, {
      id: randomUUID(),
      ...event,
      fromDay: from,
      toDay: to,
      itemTypeIds: [...new Set(itemTypes)],
    });
  }
}

async function loadStock({ db, file, by }: Load): Promise<void> {
  for (const count of file.counts) {
    const { amount } = amountIn(file, count.supply, count.amount);
    const countedAt = endOfDay(count.on, file.shop.timeZone);
    const statement = { supplyId: count.supply, amount, method: "number" as const, typed: count.amount };
    required(await recordCount(db, { id: randomUUID(), ...statement, note: null, countedAt }, by), "counted");
  }
  const inOrder = [...file.receipts].sort((a, b) => (a.on < b.on ? -1 : 1));
  for (const receipt of inOrder) {
    const lines = receipt.lines.map((line) => ({
      id: randomUUID(),
      supplyId: line.supply,
      purchaseLineId: null,
      packs: line.packs,
      packAmount: amountIn(file, line.supply, line.packAmount).amount,
      packTyped: line.packAmount,
      priceMinor: line.price,
    }));
    const terms = { currency: file.shop.currency, rateMillionths: 1_000_000, taxIncluded: true, taxMinor: 0 };
    const head = {
      id: randomUUID(),
      supplierId: receipt.supplier,
      receivedOn: receipt.on,
      kind: "paid" as const,
    };
    const body = { ...head, ...terms, deliveryMinor: receipt.delivery, note: null, lines };
    required(await recordReceipt(db, body, by), "received");
  }
}

function required(outcome: { readonly kind: string }, wanted: string): void {
  if (outcome.kind !== wanted) {
    throw new RangeError(`loadShopFile requires records to be ${wanted}, got ${JSON.stringify(outcome)}`);
  }
}

function amountIn(
  file: ShopFile,
  supplyId: string,
  text: string,
): { amount: Amount; typedValue: string; typedUnit: string } {
  const supply = file.supplies.find((each) => each.id === supplyId);
  const read = supply === undefined ? null : parseAmount(text, supply.unit, file.shop.measures);
  if (read?.kind !== "amount") {
    throw new RangeError(`loadShopFile requires an amount of ${supplyId} that can be read, got ${text}`);
  }
  return { amount: read.amount, typedValue: read.typedValue, typedUnit: read.typedUnit };
}
