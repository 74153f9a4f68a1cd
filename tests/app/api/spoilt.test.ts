import { NextRequest } from "next/server";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DELETE } from "#app/api/spoilt/[id]/route.ts";
import { POST } from "#app/api/spoilt/route.ts";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { recordCount } from "#prisma/records/counts";
import { movementsOf, newestLine } from "#prisma/records/movements";
import { proveRollUps } from "#prisma/records/roll-ups";
import { stockOf } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";

vi.mock("next/headers", () => ({ headers: async () => new Headers({ "user-agent": "test" }) }));

const ADDRESS = "http://127.0.0.1:3000/api/spoilt";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  globalThis.waddingDatabase = Promise.resolve(shop.db);
  await recordCount(
    shop.db,
    {
      id: "count",
      supplyId: "paper",
      amount: amount(50 * AMOUNT_PER_UNIT),
      method: "number",
      typed: "50",
      note: null,
    },
    { device: "test", now: "2026-03-10T12:00:00.000Z" },
  );
});
afterEach(async () => {
  globalThis.waddingDatabase = undefined;
  await shop.close();
});

async function torn(changes: Record<string, unknown> = {}) {
  const form = {
    supplyId: "paper",
    amount: AMOUNT_PER_UNIT / 2,
    value: "½",
    unit: "sheet",
    words: "torn",
    shownAfter: await newestLine(shop.db),
    ...changes,
  };
  return form;
}

async function posted(body: unknown, type = "application/json") {
  const text = typeof body === "string" ? body : JSON.stringify(body);
  const answer = await POST(
    new NextRequest(ADDRESS, { method: "POST", headers: { "content-type": type }, body: text }),
  );
  return { status: answer.status, body: await answer.json() };
}

async function takenBack(id: string) {
  const answer = await DELETE(new NextRequest(`${ADDRESS}/${id}`, { method: "DELETE" }), {
    params: Promise.resolve({ id }),
  });
  return { status: answer.status, body: await answer.json() };
}

const onHand = async () =>
  ((await stockOf(shop.db)).find(({ supplyId }) => supplyId === "paper")?.amount ?? Number.NaN) /
  AMOUNT_PER_UNIT;

describe("a loss sent from the bench", () => {
  it("is a movement of its own, with its reason, and keeps the roll-ups in step", async () => {
    const { status, body } = await posted(await torn());
    expect(status).toBe(201);
    const [line] = await movementsOf(shop.db, "paper", { limit: 1 });
    expect(line).toMatchObject({
      id: body.movementId,
      amount: -AMOUNT_PER_UNIT / 2,
      cause: "spoilt",
      words: "torn",
      typedValue: "½",
      typedUnit: "sheet",
      parcelId: null,
    });
    expect(await onHand()).toBe(49.5);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });

  it("needs no reason", async () => {
    await posted(await torn({ words: "" }));
    const [line] = await movementsOf(shop.db, "paper", { limit: 1 });
    expect(line?.words).toBe("spoilt at the bench");
  });

  it("is booked once when it is sent again, and another one after the bench has seen the first", async () => {
    const sent = await torn();
    const first = await posted(sent);
    expect(await posted(sent)).toEqual({
      status: 200,
      body: { kind: "already-spoilt", movementId: first.body.movementId },
    });
    expect((await posted({ ...sent, words: "wet" })).status).toBe(409);
    expect((await posted({ ...sent, shownAfter: first.body.movementId })).status).toBe(201);
    expect(await onHand()).toBe(49);
  });

  it("is taken back once, and nothing else is", async () => {
    const count = await newestLine(shop.db);
    const { body } = await posted(await torn());
    expect(await takenBack(String(body.movementId))).toMatchObject({
      status: 200,
      body: { kind: "reversed" },
    });
    expect(await takenBack(String(body.movementId))).toMatchObject({ body: { kind: "already-reversed" } });
    for (const id of [String(count), "0", "-1", "none", "1e400"]) {
      expect((await takenBack(id)).status).toBe(404);
    }
    expect(await onHand()).toBe(50);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });

  it.each([
    [{ supplyId: "gone" }, 422, /does not know the supply “gone”/],
    [{ amount: 0 }, 422, /amount: An amount above zero/],
    [{ amount: -1 }, 422, /amount/],
    [{ amount: 0.5 }, 422, /amount/],
    [{ amount: 1e300 }, 422, /amount/],
    [{ words: "x".repeat(201) }, 422, /words/],
    [{ shownAfter: "0" }, 422, /shownAfter/],
  ])(
    "is refused with the field named where it has %o, and nothing is written",
    async (change, status, words) => {
      const before = await newestLine(shop.db);
      const answer = await posted(await torn(change));
      expect(answer.status).toBe(status);
      expect(answer.body.problems[0].message).toMatch(words);
      expect(answer.body.problems[0].wayOut).not.toBe("");
      expect(await newestLine(shop.db)).toBe(before);
    },
  );

  it("is refused where it is no JSON", async () => {
    expect((await posted("{")).status).toBe(400);
    expect((await posted(await torn(), "text/plain")).status).toBe(415);
  });
});
