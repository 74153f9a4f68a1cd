import { writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { importParcelsWith } from "#app/import/import-parcels.ts";
import { problemWords } from "#app/import/problem-words.ts";
import { type LightShop, lightShop } from "../../prisma/records/import/light-shop";
import { rowsWithContent } from "./csv-text";

const RUNS = 2000;
const SEED = 20_261_125;
const NOW = "2026-11-25T18:00:00.000Z";

let shop: LightShop;
beforeAll(() => {
  shop = lightShop();
  // Only the outcome counts here, not that it survives a power cut.
  shop.db.pragma("synchronous = off");
});
afterAll(() => shop.close());

const oneOf = <T>(...values: T[]) => fc.constantFrom(...values);
const cells = fc.record({
  day: oneOf(
    "2026-07-01",
    "2026-07-02",
    "01.07.2026",
    "07/01/2026",
    "2026-13-01",
    "",
    "yesterday",
    "2026-07-01 10:00",
  ),
  order: oneOf("A1", "A2", "Ö-3", "", '"A4"', '"A\n5"', 'A"6', '"A""7"', "\u0000", "é".repeat(201)),
  type: oneOf("mug", "Plate", "MUG ", "", '"mug"', "teapot", "mug;plate", "mug,plate"),
  pieces: oneOf("1", "2", "", "0", "-1", "1.5", "1e3", "99999999999", "x", "٣"),
});
const good = fc.record({
  day: oneOf("2026-07-01"),
  order: oneOf("A1", "A2", '"A,8"', ""),
  type: oneOf("mug", "plate"),
  pieces: oneOf("1", "3"),
});
const row = fc.oneof({ weight: 4, arbitrary: good }, { weight: 1, arbitrary: cells });
const lines = fc.array(row, { maxLength: 12 });
const damage = fc.oneof(
  { weight: 3, arbitrary: fc.constant((text: string) => text) },
  { weight: 1, arbitrary: fc.nat(400).map((at) => (text: string) => text.slice(0, at)) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.nat(400), oneOf('"', "\n", "\r", ",", ";", "\t", "\u0000", "\ufeff", "\ud800", ",,,,", '""'))
      .map(
        ([at, sign]) =>
          (text: string) =>
            text.slice(0, at) + sign + text.slice(at),
      ),
  },
);
const file = fc.record({
  rows: lines,
  sign: oneOf(",", ";", "\t", "|"),
  end: oneOf("\n", "\r\n", "\r"),
  change: damage,
  bytes: oneOf("utf8", "utf16le", "latin1"),
});

describe("malformed files", () => {
  it("each is refused with a reason and leaves no trace, or is imported whole", async () => {
    const path = join(shop.folder, "malformed.csv");
    const parcels = () =>
      shop.db.prepare<[], { n: number }>(`SELECT COUNT(*) AS "n" FROM "Parcel"`).get()?.n ?? -1;
    const pieces = shop.db.prepare<[], { n: number | null }>(
      `SELECT SUM("pieces") AS "n" FROM "ParcelPiece"`,
    );
    const outcomes = { committed: 0, refused: 0 };
    let source = 0;
    await fc.assert(
      fc.asyncProperty(file, async ({ rows, sign, end, change, bytes }) => {
        const header = ["date", "order", "item type", "pieces"].join(sign);
        const text = change(
          [header, ...rows.map((r) => [r.day, r.order, r.type, r.pieces].join(sign))].join(end),
        );
        writeFileSync(
          path,
          bytes === "utf16le"
            ? Buffer.from(`\ufeff${text}`, bytes)
            : Buffer.from(text, bytes as BufferEncoding),
        );
        const before = { parcels: parcels(), pieces: pieces.get()?.n ?? 0 };
        source += 1;
        const run = await importParcelsWith(shop.db, path, { source: `s${source}`, now: NOW, pauseMs: 0 });
        if (run.state === "committed") {
          outcomes.committed += 1;
          expect(run.rowsRead).toBe(rowsWithContent(text) - 1);
          expect(parcels() - before.parcels).toBe(run.newParcels);
          expect(run.newParcels).toBeGreaterThan(0);
          expect(pieces.get()?.n ?? 0).toBeGreaterThan(before.pieces);
        } else {
          outcomes.refused += 1;
          expect(run.state).toBe("refused");
          expect(run.problems?.total).toBeGreaterThan(0);
          for (const problem of run.problems?.problems ?? []) expect(problemWords(problem)).toMatch(/\.$/);
          expect({ parcels: parcels(), pieces: pieces.get()?.n ?? 0 }).toEqual(before);
        }
        expect(shop.db.prepare(`SELECT 1 FROM "StagedRow" LIMIT 1`).get()).toBeUndefined();
      }),
      { numRuns: RUNS, seed: SEED },
    );
    expect(outcomes.committed).toBeGreaterThan(RUNS / 10);
    expect(outcomes.refused).toBeGreaterThan(RUNS / 10);
  });
});
