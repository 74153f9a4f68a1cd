import { parse } from "csv-parse/sync";
import { NextRequest } from "next/server";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { GET } from "#app/api/parcels.csv/route.ts";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { paperParcel } from "../../prisma/records/paper-parcel";
import { pricedShop } from "../../prisma/records/priced-shop";
import { parcelBody, type ShopFixture } from "../../prisma/records/shop-fixture";

const by = { device: "desk", now: "2026-03-10T12:00:00.000Z" } as const;

let shop: ShopFixture;
beforeEach(async () => {
  shop = await pricedShop();
  globalThis.waddingDatabase = Promise.resolve(shop.db);
});
afterEach(async () => {
  globalThis.waddingDatabase = undefined;
  await shop.close();
});

const ask = (query = "") => GET(new NextRequest(`http://127.0.0.1:3000/api/parcels.csv${query}`));

async function rows(query = ""): Promise<Record<string, string>[]> {
  return parse(await (await ask(query)).text(), { columns: true });
}

describe("parcels as CSV", () => {
  it("are one row each with their orders, weights in grams and money as plain numbers", async () => {
    await recordParcel(
      shop.db,
      paperParcel("parcel-1", 7, {
        orders: [{ reference: "A-1" }, { reference: "A-2" }],
        promised: { mg: 907_185, typed: "2 lb" },
        scaleMg: 910_000,
        scaleTyped: "910 g",
        postageMinor: 1_234,
        note: 'two, "thin"\nand tall',
      }),
      by,
    );
    const answer = await ask();
    expect(answer.headers.get("content-type")).toBe("text/csv; charset=utf-8");
    expect(answer.headers.get("content-disposition")).toContain("parcels.csv");
    expect(await rows()).toEqual([
      {
        parcel: "parcel-1",
        "packed on": "2026-03-10",
        contents: "Mug",
        pieces: "1",
        style: "paper",
        cartons: "Carton 8 × 8 × 8",
        zone: "Near",
        orders: "A-1; A-2",
        "weight in g": "910",
        "weight as typed": "910 g",
        "promised at most in g": "907.185",
        "promised as typed": "2 lb",
        promise: "broken",
        "packing cost in USD": "1.39",
        "packing at today's prices in USD": "1.66",
        "postage in USD": "12.34",
        "posted on": "",
        "arrived broken on": "",
        "why it broke": "",
        "what broke": "",
        "came back on": "",
        unusual: "",
        void: "",
        note: 'two, "thin"\nand tall',
      },
    ]);
  });

  it("leave empty what is not known, and say what is void", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1", { zoneId: null }), by);
    await recordParcel(shop.db, paperParcel("parcel-2", 1, { packedOn: "2026-03-01" }), by);
    await voidParcel(shop.db, "parcel-2", "never sent", by);
    const [unknown, voided] = await rows();
    const packing = [
      "packing cost in USD",
      "packing at today's prices in USD",
      "zone",
      "weight in g",
      "void",
    ];
    expect(packing.map((column) => unknown?.[column])).toEqual(["", "", "", "", ""]);
    expect(packing.slice(-1).map((column) => voided?.[column])).toEqual(["never sent"]);
  });

  it("hold the parcels that the list holds under the same address", async () => {
    await recordParcel(shop.db, paperParcel("parcel-1", 7), by);
    await recordParcel(shop.db, paperParcel("parcel-2", 7, { style: "bubble" }), by);
    await recordParcel(shop.db, paperParcel("parcel-3", 7, { packedOn: "2026-03-01" }), by);
    const ids = async (query: string) => (await rows(query)).map(({ parcel }) => parcel);
    expect(await ids("?style=bubble&before=parcel-1&text=")).toEqual(["parcel-2"]);
    expect(await ids("?to=2026-03-09")).toEqual(["parcel-3"]);
    expect(await ids("?only=broken")).toEqual([]);
  });

  it.each(["=SUM(A1)", "+1", "-1", "@A1"])("make %s harmless where it is text", async (text) => {
    const orders = [{ reference: text }];
    await recordParcel(shop.db, paperParcel("parcel-1", 7, { note: text, orders }), by);
    expect((await rows())[0]).toMatchObject({ note: `'${text}`, orders: `'${text}` });
  });

  it.each([
    ["from", "?from=yesterday"],
    ["to", "?from=2026-03-02&to=2026-03-01"],
    ["style", "?style=silk"],
    ["only", "?only=lost"],
  ])("are refused with the field where %s can't be read", async (field, query) => {
    const answer = await ask(query);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({ kind: "problems", problems: [{ field }] });
  });
});
