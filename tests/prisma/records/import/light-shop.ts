import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { migrateDatabase } from "#prisma/migrate";
import { type ImportConnection, openImportConnection } from "#prisma/records/import/import-connection";

/** A small migrated shop in a folder of its own: two item types with paper recipes, five supplies. */
export type LightShop = {
  readonly folder: string;
  readonly file: string;
  readonly db: ImportConnection;
  readonly close: () => void;
};

/** Makes the shop. Its figures are invented. */
export function lightShop(timeZone = "America/Chicago"): LightShop {
  const folder = mkdtempSync(join(tmpdir(), "wadding-import-"));
  const file = join(folder, "shop.db");
  migrateDatabase(file);
  const db = openImportConnection(file);
  db.prepare(
    `INSERT INTO "Shop" ("id", "name", "timeZone", "currency") VALUES ('shop', 'A shop', ?, 'USD')`,
  ).run(timeZone);
  db.exec(SHOP);
  return {
    folder,
    file,
    db,
    close: () => {
      db.close();
      rmSync(folder, { recursive: true });
    },
  };
}

const SHOP = `
  INSERT INTO "Supply" ("id", "name", "kind", "useUnit") VALUES ('tissue', 'Tissue', 'tissue', 'sheet'),
    ('paper', 'Packing paper', 'paper', 'sheet'), ('tape', 'Tape', 'tape', 'foot'),
    ('carton-8', '8 × 8 × 8 carton', 'carton', 'each'), ('carton-12', '12 × 9 × 8 carton', 'carton', 'each');
  INSERT INTO "SupplyStock" ("supplyId", "amount", "value", "costValue", "costAmount")
    VALUES ('tissue', 0, 0, 20007, 12000), ('paper', 0, 0, 0, 0);
  INSERT INTO "ItemType" ("id", "name") VALUES ('mug', 'Mug'), ('plate', 'Plate');
  INSERT INTO "Recipe" ("id", "itemTypeId", "style", "effectiveFrom", "recordedAt") VALUES
    ('mug-1', 'mug', 'paper', '2026-01-01', '2026-01-01T00:00:00.000Z'),
    ('mug-2', 'mug', 'paper', '2026-06-01', '2026-06-01T00:00:00.000Z'),
    ('plate-1', 'plate', 'paper', '2026-01-01', '2026-01-01T00:00:00.000Z');
  INSERT INTO "RecipeStep" ("id", "recipeId", "position", "words", "supplyId", "amount", "typedValue", "typedUnit", "per") VALUES
    ('mug-1-a', 'mug-1', 1, 'Wrap', 'tissue', 24000, '2', 'sheet', 'piece'),
    ('mug-2-a', 'mug-2', 1, 'Wrap', 'tissue', 36000, '3', 'sheet', 'piece'),
    ('mug-2-b', 'mug-2', 2, 'Seal', 'tape', 48000, '4', 'foot', 'parcel'),
    ('plate-1-a', 'plate-1', 1, 'Wrap', 'paper', 12000, '1', 'sheet', 'piece');
  INSERT INTO "RecipeCarton" ("recipeId", "upTo", "supplyId") VALUES ('mug-2', 2, 'carton-8'), ('mug-2', 9, 'carton-12');
`;
