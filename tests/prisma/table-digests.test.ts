import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { compareTables, tableDigests } from "#prisma/table-digests";

function digestsOf(sql: string) {
  const db = new Database(":memory:");
  try {
    db.exec(sql);
    return tableDigests(db);
  } finally {
    db.close();
  }
}

const TABLE = `CREATE TABLE "Sheet" ("id", "note");`;

describe("table digests", () => {
  it("are equal for the same rows written in another order", () => {
    const one = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (1, 'a'), (2, 'b')`);
    const other = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (2, 'b'), (1, 'a')`);
    expect(compareTables(one, other)).toEqual([]);
  });

  it("tell one changed value", () => {
    const one = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (1, 'a')`);
    const other = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (1, 'b')`);
    expect(compareTables(one, other)).toEqual([{ table: "Sheet", rows: 1, otherRows: 1 }]);
  });

  it("tell a number from the text that looks like it, and nothing from empty text", () => {
    const number = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (1, NULL)`);
    const text = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES ('1', NULL)`);
    const empty = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (1, '')`);
    expect([compareTables(number, text).length, compareTables(number, empty).length]).toEqual([1, 1]);
  });

  it("tell whole numbers apart that are too large for a floating-point number", () => {
    const one = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (9007199254740993, NULL)`);
    const other = digestsOf(`${TABLE} INSERT INTO "Sheet" VALUES (9007199254740992, NULL)`);
    expect(compareTables(one, other)).toHaveLength(1);
  });

  it("tell a table that the other has not", () => {
    expect(compareTables(digestsOf(TABLE), digestsOf(""))).toEqual([
      { table: "Sheet", rows: 0, otherRows: null },
    ]);
  });
});
