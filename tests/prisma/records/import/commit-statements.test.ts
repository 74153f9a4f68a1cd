import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BALANCING, ROLL_UPS, TAKE_BACK, USE } from "#prisma/records/import/commit-statements";
import { type LightShop, lightShop } from "./light-shop";

let shop: LightShop;
beforeAll(() => {
  shop = lightShop();
  shop.db.function("stock_value", (amount: unknown, _value: unknown, _of: unknown) => amount);
});
afterAll(() => shop.close());

function planOf(statement: string): string[] {
  const values = {
    runId: "r",
    source: "s",
    device: "d",
    now: "n",
    before: 0,
    wholeShare: 1,
    after: "",
    until: "z",
  };
  return shop.db
    .prepare<[typeof values], { detail: string }>(`EXPLAIN QUERY PLAN ${statement}`)
    .all(values)
    .map((step) => step.detail);
}

// A commit holds the write lock, so it may look at its own parcels and lines, never at the whole ledger.
describe("statements of a commit", () => {
  it.each([
    ["takes back", TAKE_BACK],
    ["books use", [USE]],
    ["balances later counts", [BALANCING]],
    ["brings the roll-ups in step", ROLL_UPS],
  ])("%s without walking the whole ledger", (_name, statements) => {
    for (const statement of statements) {
      const plan = planOf(statement);
      expect(plan.length).toBeGreaterThan(0);
      expect(plan.filter((step) => /^SCAN (m|Movement)\b/.test(step))).toEqual([]);
      // Nearly every line reverses nothing: this index would give them all.
      expect(plan.filter((step) => step.startsWith("SEARCH m USING INDEX Movement_reversesId_key"))).toEqual(
        [],
      );
    }
  });
});
