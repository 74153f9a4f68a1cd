import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { instant } from "#lib/units/instant";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { migrateDatabase } from "#prisma/migrate";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { copyStarter } from "#prisma/starter/copy-starter";

const AT = { day: day("2026-11-25"), now: instant("2026-11-25T12:00:00.000Z") };
const folder = mkdtempSync(join(tmpdir(), "wadding-starter-"));
let db: Database;

beforeAll(async () => {
  const file = join(folder, "starter.db");
  migrateDatabase(file);
  db = await openDatabase(file);
});

afterAll(async () => {
  await closeDatabase(db);
  rmSync(folder, { recursive: true });
});

describe("copyStarter", () => {
  it("copies the wanted type with only the supplies that it needs, marked as guesses", async () => {
    const copied = await copyStarter(db, { itemTypeIds: ["lamp-chimney"], ...AT });
    expect(copied).toEqual({ supplies: 7, itemTypes: 1, recipes: 2 });
    const supplies = await suppliesOf(db);
    expect(supplies.map((supply) => supply.id)).toEqual([
      "tissue",
      "packing-paper",
      "small-bubble",
      "large-bubble",
      "household-tape",
      "carton-tape",
      "carton-8x8x14",
    ]);
    expect(supplies.every((supply) => supply.guessed)).toBe(true);
    const recipes = await recipesOf(db);
    expect(recipes.map((recipe) => [recipe.style, recipe.commonPractice])).toEqual([
      ["bubble", true],
      ["paper", true],
    ]);
  });

  it("leaves what the shop has as it is, and adds what is missing", async () => {
    const [type] = await itemTypesOf(db);
    if (type === undefined) throw new RangeError("the lamp chimney is gone");
    await saveItemType(db, { ...type, name: "Oil lamp glass" });
    const copied = await copyStarter(db, { itemTypeIds: ["lamp-chimney", "bottle"], ...AT });
    expect(copied).toEqual({ supplies: 0, itemTypes: 1, recipes: 2 });
    expect((await itemTypesOf(db)).map((each) => each.name)).toContain("Oil lamp glass");
  });

  it("refuses a type that it does not know", async () => {
    await expect(copyStarter(db, { itemTypeIds: ["anvil"], ...AT })).rejects.toThrow(
      "copyStarter requires ids of starter item types, got anvil",
    );
  });
});
