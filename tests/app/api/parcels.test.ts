import { NextRequest } from "next/server";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DELETE, PUT } from "#app/api/parcels/[id]/route.ts";
import { GET, POST } from "#app/api/parcels/route.ts";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { recordCount } from "#prisma/records/counts";
import { parcelOf } from "#prisma/records/parcel-lists";
import { saveRecipe } from "#prisma/records/recipes";
import { proveRollUps } from "#prisma/records/roll-ups";
import { stockOf } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";

vi.mock("next/headers", () => ({ headers: async () => new Headers({ "user-agent": "test" }) }));

const DAY = "2026-03-10";
const ADDRESS = "http://127.0.0.1:3000/api/parcels";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  globalThis.waddingDatabase = Promise.resolve(shop.db);
  await saveRecipe(
    shop.db,
    {
      id: "mug-paper",
      itemTypeId: "mug",
      style: "paper",
      effectiveFrom: day("2026-01-01"),
      commonPractice: false,
      note: null,
      steps: [
        {
          id: "wrap",
          position: 1,
          words: "Wrap",
          supplyId: "paper",
          amount: amount(AMOUNT_PER_UNIT / 3),
          typedValue: "1/3",
          typedUnit: "sheet",
          per: "piece",
        },
      ],
      cartons: [{ upTo: 4, supplyId: "carton-8" }],
    },
    "2026-01-01T12:00:00.000Z",
  );
});
afterEach(async () => {
  globalThis.waddingDatabase = undefined;
  await shop.close();
});

function usualMugs(changes: Record<string, unknown> = {}) {
  return {
    id: "parcel-0001",
    packedOn: DAY,
    style: "paper",
    pieces: [{ itemTypeId: "mug", pieces: 3 }],
    ...changes,
  };
}

function post(body: unknown): Promise<Response> {
  return POST(request("POST", ADDRESS, JSON.stringify(body)));
}

function request(method: string, address: string, body?: string): NextRequest {
  return new NextRequest(address, {
    method,
    headers: { "content-type": "application/json" },
    ...(body === undefined ? {} : { body }),
  });
}

async function onHand(supplyId: string): Promise<number> {
  return (await stockOf(shop.db)).find((stock) => stock.supplyId === supplyId)?.amount ?? 0;
}

const at = (id: string) => ({ params: Promise.resolve({ id }) });

describe("sending a parcel", () => {
  it("fills lines and carton from the recipe: three thirds of a sheet are one sheet exactly", async () => {
    expect((await post(usualMugs())).status).toBe(201);
    expect(await onHand("paper")).toBe(-AMOUNT_PER_UNIT);
    expect(await onHand("carton-8")).toBe(-AMOUNT_PER_UNIT);
  });

  it("is recorded once however often it is sent", async () => {
    await post(usualMugs());
    const again = await post(usualMugs());
    expect(again.status).toBe(200);
    expect(await again.json()).toMatchObject({ kind: "already-recorded", parcelId: "parcel-0001" });
    expect(await onHand("paper")).toBe(-AMOUNT_PER_UNIT);
  });

  it("is a conflict under a known key with other content", async () => {
    await post(usualMugs());
    const other = await post(usualMugs({ pieces: [{ itemTypeId: "mug", pieces: 2 }] }));
    expect(other.status).toBe(409);
    expect(await other.json()).toMatchObject({ kind: "conflict", problems: [{ field: "id" }] });
  });

  it("reads typed amounts, weights and money, and keeps what was typed", async () => {
    const lines = [{ supplyId: "paper", value: "1 1/3" }];
    await post(usualMugs({ lines, cartons: [], scaleTyped: "2 lb 15 oz", postageTyped: "9.80" }));
    expect(await parcelOf(shop.db, "parcel-0001")).toMatchObject({
      scaleMg: 1_332_428,
      scaleTyped: "2 lb 15 oz",
      postageMinor: 980,
      movements: [{ amount: -16_000, typedValue: "1 1/3" }],
    });
  });

  it("is refused with the field and the way out where an amount can't be read", async () => {
    const refused = await post(usualMugs({ lines: [{ supplyId: "paper", value: "1..5" }] }));
    expect(refused.status).toBe(422);
    const { problems } = (await refused.json()) as { problems: { field: string; wayOut: string }[] };
    expect(problems).toMatchObject([{ field: "lines.0.value" }]);
    expect(problems[0]?.wayOut).toContain("1 1/3");
    expect(await onHand("paper")).toBe(0);
  });

  it("is refused without a key, and writes nothing", async () => {
    const refused = await post(usualMugs({ id: "" }));
    expect(refused.status).toBe(422);
    expect(await refused.json()).toMatchObject({ problems: [{ field: "id" }] });
  });

  it("is refused where the text is no JSON", async () => {
    expect((await POST(request("POST", ADDRESS, "{"))).status).toBe(400);
  });

  it("is refused on a day that the calendar does not have", async () => {
    expect((await post(usualMugs({ packedOn: "2026-02-30" }))).status).toBe(422);
  });

  it.each([
    ["packedOn", { packedOn: "2999-01-01" }, "still ahead"],
    ["packedOn", { packedOn: "1900-01-01" }, "too long ago"],
    ["scaleTyped", { scaleTyped: "900000 lb" }, "more than any parcel weighs"],
  ])("is refused where %s can only be mistyped, and writes nothing", async (field, change, words) => {
    const refused = await post(usualMugs(change));
    expect(refused.status).toBe(422);
    const { problems } = await refused.json();
    expect(problems).toMatchObject([{ field, message: expect.stringContaining(words) }]);
    expect(await parcelOf(shop.db, "parcel-0001")).toBeNull();
  });

  it("asks before or after where a count fell on its day, and takes the answer", async () => {
    const counted = {
      id: "count",
      supplyId: "paper",
      amount: amount(AMOUNT_PER_UNIT * 10),
      method: "number" as const,
    };
    await recordCount(
      shop.db,
      { ...counted, typed: "10", note: null, countedAt: `${DAY}T12:00:00.000Z` },
      { device: "test", now: `${DAY}T12:00:00.000Z` },
    );
    const asked = await post(usualMugs());
    expect(asked.status).toBe(409);
    expect(await asked.json()).toMatchObject({ kind: "ask-count-order", supplies: ["paper"] });
    expect((await post(usualMugs({ countedSameDay: "before" }))).status).toBe(201);
    expect(await onHand("paper")).toBe(AMOUNT_PER_UNIT * 10);
  });

  it("warns of an order number seen before, and keeps both parcels", async () => {
    await post(usualMugs({ orders: [{ reference: "A-1" }] }));
    const second = await post(usualMugs({ id: "parcel-0002", orders: [{ reference: "A-1" }] }));
    expect(second.status).toBe(201);
    expect(await second.json()).toMatchObject({ warnings: [{ field: "orders" }] });
  });
});

describe("changing a sent parcel", () => {
  it("corrects it under its key in the address", async () => {
    await post(usualMugs());
    const body = JSON.stringify(usualMugs({ id: "ignored-key", pieces: [{ itemTypeId: "mug", pieces: 1 }] }));
    const answer = await PUT(request("PUT", `${ADDRESS}/parcel-0001`, body), at("parcel-0001"));
    expect(answer.status).toBe(200);
    expect(await onHand("paper")).toBe(-AMOUNT_PER_UNIT / 3);
  });

  it("voids it: the stock is back, the parcel stays, the roll-ups agree", async () => {
    await post(usualMugs());
    const answer = await DELETE(request("DELETE", `${ADDRESS}/parcel-0001?reason=undone`), at("parcel-0001"));
    expect(answer.status).toBe(200);
    expect(await onHand("paper")).toBe(0);
    expect(await parcelOf(shop.db, "parcel-0001")).toMatchObject({ voidReason: "undone" });
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });

  it("says that there is none under an unknown key", async () => {
    expect((await DELETE(request("DELETE", `${ADDRESS}/nobody`), at("nobody"))).status).toBe(404);
  });
});

describe("asking for parcels", () => {
  it("lists those packed between two days", async () => {
    await post(usualMugs());
    await post(usualMugs({ id: "parcel-0002", packedOn: "2026-04-01" }));
    const answer = await GET(request("GET", `${ADDRESS}?from=2026-03-01&to=2026-03-31`));
    const { parcels } = (await answer.json()) as { parcels: { id: string }[] };
    expect(parcels.map((parcel) => parcel.id)).toEqual(["parcel-0001"]);
  });

  it("refuses a day that can't be read", async () => {
    expect((await GET(request("GET", `${ADDRESS}?from=yesterday`))).status).toBe(422);
  });
});
