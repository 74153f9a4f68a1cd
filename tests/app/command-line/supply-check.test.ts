import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { instant } from "#lib/units/instant";
import { migrateDatabase } from "#prisma/migrate";
import { runSupplyCheck } from "../../../app/command-line/supply-check/run-supply-check";

const LOADING_MS = 120_000;
const folder = mkdtempSync(join(tmpdir(), "wadding-command-"));
afterAll(() => rmSync(folder, { recursive: true }));

const SHOP = {
  shop: {
    name: "Test shop",
    timeZone: "UTC",
    currency: "USD",
    minorDigits: 2,
    weekStartsOn: 1,
    measures: "imperial",
    reviewDays: 7,
    servicePerMille: 950,
    coverWeeks: 4,
    defaultStyle: "paper",
  },
  zones: [],
  closed: [],
  supplies: [{ id: "tissue", name: "Tissue", kind: "tissue", unit: "sheet" }],
  suppliers: [{ id: "paper", name: "Paper", leadTimeDays: 3, deliveryMinor: 0 }],
  offers: [{ id: "ream", supply: "tissue", supplier: "paper", pack: "ream", packAmount: "100", price: 500 }],
  itemTypes: [
    {
      id: "mug",
      name: "Mug",
      recipes: [
        {
          style: "paper",
          from: "2026-01-01",
          steps: [{ words: "Wrap", supply: "tissue", amount: "1 1/2", per: "piece" }],
          cartons: [],
        },
      ],
    },
  ],
  counts: [{ supply: "tissue", on: "2026-01-04", amount: "40" }],
  receipts: [],
};

function written(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

async function run(...args: string[]) {
  const answered: string[] = [];
  const told: string[] = [];
  const databaseFile = join(folder, "own.db");
  migrateDatabase(databaseFile);
  const code = await runSupplyCheck(args, {
    databaseFile,
    now: instant("2026-03-02T12:00:00.000Z"),
    write: (text) => answered.push(text),
    tell: (text) => told.push(text),
  });
  return { code, out: answered.join(""), told: told.join("") };
}

const PARCELS = `shipped_on,order_ref,item_type,pieces\n${[5, 6, 13, 14, 20, 22]
  .map((date, index) => `2026-01-${String(date).padStart(2, "0")},A${index},mug,2`)
  .join("\n")}\n`;

describe("supply-check", () => {
  it.each([
    [["--today", "2026-13-01"], "--today needs a day"],
    [["--shop", "shop.json"], "go together"],
    [["--whatever"], "--whatever"],
    [["now"], "now"],
  ])("refuses %j with a message and exit code 2", async (args, message) => {
    const { code, out, told } = await run(...args);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(told).toContain(message);
  });

  it("says so where there is no shop yet", async () => {
    const { code, told } = await run();
    expect(code).toBe(1);
    expect(told).toContain("no shop yet");
  });

  it("names the field of a shop file that is wrong", async () => {
    const wrong = { ...SHOP, counts: [{ supply: "tisue", on: "2026-01-04", amount: "40" }] };
    const shop = written("wrong.json", JSON.stringify(wrong));
    const { code, out, told } = await run("--import", written("p0.csv", PARCELS), "--shop", shop);
    expect(code).toBe(1);
    expect(out).toBe("");
    expect(told).toContain("counts[0].supply");
  });

  it(
    "checks files as a table and as JSON, and leaves nothing behind",
    async () => {
      const files = [
        "--import",
        written("p.csv", PARCELS),
        "--shop",
        written("shop.json", JSON.stringify(SHOP)),
      ];
      const ours = () => readdirSync(tmpdir()).filter((name) => name.startsWith("wadding-check-"));
      const before = ours();
      const table = await run(...files, "--today", "2026-01-23");
      expect(table.code).toBe(0);
      expect(table.out).toContain("Tissue");
      expect(table.out).toContain("22 sheets");
      expect(table.told).toContain("Importing");

      const json = await run(...files, "--today", "2026-01-23", "--json");
      const [row] = JSON.parse(json.out);
      // 40 sheets counted, 6 parcels of 2 mugs at 1½ sheets: 22 left.
      expect(row).toMatchObject({ supply: "Tissue", onHand: 22, onOrder: 0, unit: "sheet" });
      expect(Object.keys(row)).toEqual([
        "supply",
        "onHand",
        "onOrder",
        "unit",
        "usePerWeek",
        "reorderPoint",
        "runOutDate",
        "orderByDate",
        "suggestedPacks",
        "action",
        "sentence",
      ]);
      // Two whole weeks of 2 parcels, 6 sheets each.
      expect(row.usePerWeek).toBe(6);
      expect(ours().filter((name) => !before.includes(name))).toEqual([]);
    },
    LOADING_MS,
  );
});
