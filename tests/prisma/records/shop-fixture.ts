import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { migrateDatabase } from "#prisma/migrate";
import { saveItemType } from "#prisma/records/item-types";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import { saveShop } from "#prisma/records/shop";
import { saveSupply } from "#prisma/records/supplies";
import { saveZone } from "#prisma/records/zones";

/** A throw-away database with a small invented shop: paper, bubble, one carton, one item type, one zone. */
export type ShopFixture = {
  readonly db: Database;
  readonly file: string;
  readonly close: () => Promise<void>;
};

export async function shopFixture(timeZone = "Etc/UTC"): Promise<ShopFixture> {
  const folder = mkdtempSync(join(tmpdir(), "wadding-test-"));
  const file = join(folder, "shop.db");
  await migrateDatabase(file);
  const db = await openDatabase(file);
  await saveShop(db, {
    name: "Fixture shop",
    timeZone,
    currency: "USD",
    minorDigits: 2,
    weekStartsOn: 1,
    measures: "imperial",
    reviewDays: 7,
    servicePerMille: 950,
    coverWeeks: 8,
    defaultStyle: "paper",
    guessedParcels: null,
  });
  await saveSupply(db, {
    ...PLAIN_SUPPLY,
    id: "paper",
    name: "Packing paper",
    kind: "paper",
    useUnit: "sheet",
  });
  await saveSupply(db, {
    ...PLAIN_SUPPLY,
    id: "bubble",
    name: "Small bubble",
    kind: "bubble",
    useUnit: "square-foot",
  });
  await saveSupply(db, {
    ...PLAIN_SUPPLY,
    id: "carton-8",
    name: "Carton 8 × 8 × 8",
    kind: "carton",
    useUnit: "each",
  });
  await saveItemType(db, {
    id: "mug",
    name: "Mug",
    massMg: null,
    massTyped: null,
    lengthUm: null,
    widthUm: null,
    heightUm: null,
    sizesTyped: null,
    note: null,
    retired: false,
    position: 0,
  });
  await saveZone(db, { id: "near", name: "Near", retired: false, position: 0 });
  const close = async () => {
    await closeDatabase(db);
    rmSync(folder, { recursive: true, force: true });
  };
  return { db, file, close };
}

/** A parcel of one mug in paper and bubble, changed as the test wants. */
export function parcelBody(id: string, changes: Partial<ParcelBody> = {}): ParcelBody {
  return {
    id,
    packedOn: "2026-03-10",
    style: "paper",
    pieces: [{ itemTypeId: "mug", pieces: 1 }],
    cartons: [{ supplyId: "carton-8" }],
    lines: [
      {
        supplyId: "paper",
        amount: amount(7 * AMOUNT_PER_UNIT),
        recipeStepId: null,
        typedValue: "7",
        typedUnit: "sheet",
      },
      {
        supplyId: "bubble",
        amount: amount(4 * AMOUNT_PER_UNIT),
        recipeStepId: null,
        typedValue: "4",
        typedUnit: "sq ft",
      },
    ],
    orders: [],
    zoneId: "near",
    scaleMg: null,
    scaleTyped: null,
    postageMinor: null,
    postedOn: null,
    unusual: false,
    note: null,
    ...changes,
  };
}
