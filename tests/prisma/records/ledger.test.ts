import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay } from "#lib/units/instant";
import { recordCount } from "#prisma/records/counts";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { recordReceipt } from "#prisma/records/receipts";
import { proveRollUps } from "#prisma/records/roll-ups";
import { recordSpoilage } from "#prisma/records/spoilage";
import { stockOf } from "#prisma/records/supplies";
import { parcelBody, shopFixture } from "./shop-fixture";

// What a person can do, in any order: `back` days ago (0: now), an amount in halves, thirds and quarters.
const action = fc.record({
  kind: fc.constantFrom("parcel", "void", "correct", "count", "spoil", "receive"),
  back: fc.integer({ min: 0, max: 6 }),
  twelfths: fc.integer({ min: 1, max: 60 }),
  pick: fc.nat(20),
});

type Entry = { readonly at: string; readonly amount: number };

/** On hand as the rules say it: the latest count, and what took effect after it. */
function expectedOnHand(entries: Iterable<Entry>, counts: readonly Entry[]): number {
  const latest = counts.reduce<Entry | null>(
    (best, count) => (best === null || count.at >= best.at ? count : best),
    null,
  );
  let sum = latest?.amount ?? 0;
  for (const entry of entries) if (latest === null || entry.at > latest.at) sum += entry.amount;
  return sum;
}

describe("the ledger", () => {
  it("keeps on hand equal to the latest count and what took effect since, under any sequence of actions", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(action, { minLength: 1, maxLength: 14 }), async (actions) => {
        const shop = await shopFixture();
        try {
          const parcels = new Map<string, Entry>();
          const others: Entry[] = [];
          const counts: Entry[] = [];
          for (const [index, step] of actions.entries()) {
            // Hourly entries from noon of 10 March on; a backdated one takes effect at the end of its day.
            const now = new Date(Date.UTC(2026, 2, 10, 9, index)).toISOString();
            const onDay = day(`2026-03-${String(10 - step.back).padStart(2, "0")}`);
            const at = step.back === 0 ? now : endOfDay(onDay, "Etc/UTC");
            const used = amount((step.twelfths * AMOUNT_PER_UNIT) / 12);
            const line = {
              supplyId: "paper",
              amount: used,
              recipeStepId: null,
              typedValue: String(step.twelfths),
              typedUnit: "twelfths",
            };
            const body = parcelBody(`p${index}`, {
              packedOn: onDay,
              lines: [line],
              cartons: [],
              countedSameDay: "after",
            });
            const by = { device: "test", now };
            const picked = [...parcels.keys()][step.pick % Math.max(parcels.size, 1)];
            if (step.kind === "parcel") {
              await recordParcel(shop.db, body, by);
              parcels.set(body.id, { at, amount: -used });
            } else if (step.kind === "void" && picked !== undefined) {
              await voidParcel(shop.db, picked, "undone", by);
              parcels.delete(picked);
            } else if (step.kind === "correct" && picked !== undefined) {
              await correctParcel(shop.db, { ...body, id: picked }, by);
              parcels.set(picked, { at, amount: -used });
            } else if (step.kind === "count") {
              const countedAt =
                step.back === 0 ? now : `${onDay}T13:00:00.${String(index).padStart(3, "0")}Z`;
              await recordCount(
                shop.db,
                {
                  id: `c${index}`,
                  supplyId: "paper",
                  amount: used,
                  method: "number",
                  typed: "x",
                  note: null,
                  countedAt,
                },
                by,
              );
              counts.push({ at: countedAt, amount: used });
            } else if (step.kind === "spoil") {
              await recordSpoilage(shop.db, { ...line, words: "torn", on: onDay }, by);
              others.push({ at, amount: -used });
            } else if (step.kind === "receive") {
              const received = {
                id: `r${index}-1`,
                supplyId: "paper",
                purchaseLineId: null,
                packs: 2,
                packAmount: used,
                packTyped: "x",
                priceMinor: step.pick,
              };
              await recordReceipt(
                shop.db,
                {
                  id: `r${index}`,
                  supplierId: null,
                  receivedOn: onDay,
                  kind: "paid",
                  currency: "USD",
                  rateMillionths: 1_000_000,
                  taxIncluded: true,
                  deliveryMinor: 3,
                  taxMinor: 0,
                  note: null,
                  lines: [received],
                },
                by,
              );
              others.push({ at, amount: 2 * used });
            }
          }
          const stock = (await stockOf(shop.db)).find((row) => row.supplyId === "paper");
          expect(stock?.amount ?? 0).toBe(expectedOnHand([...parcels.values(), ...others], counts));
          expect((await proveRollUps(shop.db)).differences).toEqual([]);
        } finally {
          await shop.close();
        }
      }),
      { numRuns: 60 },
    );
  }, 120_000);

  it("adds any sequence of halves, thirds and quarters over separate parcels exactly", async () => {
    const shop = await shopFixture();
    const parts = [2, 3, 4, 3, 3, 2, 4, 4, 4];
    for (const [index, part] of parts.entries()) {
      const line = {
        supplyId: "paper",
        amount: amount(AMOUNT_PER_UNIT / part),
        recipeStepId: null,
        typedValue: `1/${part}`,
        typedUnit: "sheet",
      };
      await recordParcel(shop.db, parcelBody(`p${index}`, { lines: [line], cartons: [] }), {
        device: "test",
        now: "2026-03-10T12:00:00.000Z",
      });
    }
    // Two halves, three thirds and four quarters are three sheets.
    expect((await stockOf(shop.db))[0]?.amount).toBe(-3 * AMOUNT_PER_UNIT);
    await shop.close();
  });

  it("neither loses nor doubles a parcel when eight clients record at once, each one twice", async () => {
    const shop = await shopFixture();
    const ids = Array.from({ length: 40 }, (_, index) => `p${index}`);
    const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };
    const clients = Array.from({ length: 8 }, async (_, client) => {
      for (const id of ids.filter((_id, index) => index % 4 === client % 4))
        await recordParcel(shop.db, parcelBody(id), by);
    });
    await Promise.all(clients);
    expect(await shop.db.parcel.count()).toBe(40);
    expect((await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.amount).toBe(
      -280 * AMOUNT_PER_UNIT,
    );
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
    await shop.close();
  });
});
