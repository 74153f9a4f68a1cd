import { describe, expect, it } from "vitest";
import { type ReceiveOrderQuestion, readReceiveOrder } from "#app/buying/receive-order-form.ts";
import { day } from "#lib/units/day";
import { BUBBLE, order, orderLine, PAPER, SHOP, units } from "./order-fixture";

/** 26.00 for 188 ft: 13.83 cents a foot, in 1/10,000 cent. */
const LAST_PAID = (2_600 * 10_000) / 188;

const question: ReceiveOrderQuestion = {
  order: order(),
  supplies: [BUBBLE, PAPER],
  shop: SHOP,
  today: day("2026-03-11"),
  lastPaid: new Map([["bubble", LAST_PAID]]),
};
const AS_ORDERED = {
  id: "key",
  receivedOn: "2026-03-11",
  currency: "USD",
  shareRule: "price",
  "came:line": "4",
  "amount:line": "188 ft",
  "price:line": "26.00",
  "rest:line": "comes",
  "restOn:line": "2026-03-16",
};

function problems(typed: Record<string, string>, changes: Partial<ReceiveOrderQuestion> = {}) {
  const read = readReceiveOrder({ ...AS_ORDERED, ...typed }, { ...question, ...changes });
  return read.kind === "problems" ? read.problems : {};
}

function without(...names: string[]): Record<string, string> {
  return Object.fromEntries(Object.entries(AS_ORDERED).filter(([name]) => !names.includes(name)));
}

function receipts(typed: Record<string, string>) {
  const read = readReceiveOrder(typed, question);
  if (read.kind === "problems") throw new Error(JSON.stringify(read.problems));
  return read.receipts;
}

describe("receiving an order on one screen", () => {
  it("takes it as ordered where nothing was typed over", () => {
    expect(receipts(AS_ORDERED)).toMatchObject([
      {
        id: "key",
        kind: "paid",
        supplierId: "north",
        deliveryMinor: 0,
        lines: [{ purchaseLineId: "line", packs: 4, packAmount: units(188), priceMinor: 2_600 }],
        restStillComes: [],
      },
    ]);
  });

  it("takes the real roll, the real price, delivery, tax on top and another currency", () => {
    const [receipt] = receipts({
      ...AS_ORDERED,
      "amount:line": "175 ft",
      "price:line": "28",
      delivery: "9.50",
      tax: "6.10",
      taxOnTop: "yes",
      currency: "eur",
      rate: "1.0836",
      shareRule: "packs",
    });
    expect(receipt).toMatchObject({
      currency: "EUR",
      rateMillionths: 1_083_600,
      taxIncluded: false,
      taxMinor: 610,
      deliveryMinor: 950,
      shareRule: "packs",
      lines: [{ packAmount: units(175), packTyped: "175 ft", priceMinor: 2_800 }],
    });
  });

  it("keeps the rest on order on its day, or lets it go", () => {
    const part = { ...AS_ORDERED, "came:line": "1" };
    expect(receipts(part)[0]?.restStillComes).toEqual([
      { purchaseLineId: "line", packs: 3, expectedOn: "2026-03-16" },
    ]);
    expect(receipts({ ...part, "rest:line": "never" })[0]?.restStillComes).toEqual([]);
    expect(problems({ "came:line": "1", "restOn:line": "2026-03-10" })).toHaveProperty(["restOn:line"]);
  });

  it("leaves a line alone of which nothing came, and says so where that is all of them", () => {
    expect(problems({ "came:line": "0" })).toEqual({ "": expect.stringContaining("Nothing came") });
  });

  it("books more than was ordered only after a tick, and names the line", () => {
    const more = problems({ "came:line": "5" });
    expect(more["came:line"]).toContain("Only 4 of Small bubble were on order");
    expect(more).toHaveProperty(["more:line"]);
    expect(receipts({ ...AS_ORDERED, "came:line": "5", "more:line": "yes" })[0]?.lines[0]).toMatchObject({
      packs: 5,
      moreThanOrdered: true,
    });
  });

  it("is no more than ordered where as much came in smaller packs", () => {
    expect(problems({ "came:line": "8", "amount:line": "94 ft", "price:line": "13.00" })).toEqual({});
  });

  it("asks once more about a price more than twenty times the last one, or less than a twentieth", () => {
    const dear = problems({ "price:line": "2600" });
    expect(dear["price:line"]).toContain("the last price paid was $0.1383 a ft");
    expect(dear).toHaveProperty(["sure:line"]);
    expect(problems({ "price:line": "1.20" })).toHaveProperty(["price:line"]);
    expect(problems({ "price:line": "2600", "sure:line": "yes" })).toEqual({});
    expect(problems({ "price:line": "520" })).toEqual({});
  });

  it("holds a first price against the one it was ordered at", () => {
    const first = problems({ "price:line": "2600" }, { lastPaid: new Map() });
    expect(first["price:line"]).toContain("it was ordered at $0.1383 a ft");
  });

  it("weighs a price in another currency by its rate", () => {
    const yen = { currency: "JPY", rate: "0.0067", "price:line": "3900" };
    expect(problems(yen)).toEqual({});
    expect(receipts({ ...AS_ORDERED, ...yen })[0]?.lines[0]?.priceMinor).toBe(3_900);
    // A yen has no smaller unit: 26.50 of them is a slip.
    expect(problems({ ...yen, "price:line": "26.50" })["price:line"]).toContain("can’t be read");
  });

  it("asks for the pack where a price has none, and refuses prices below nothing at their field", () => {
    const read = readReceiveOrder(without("amount:line"), question);
    expect(read).toMatchObject({
      problems: {
        "amount:line": "Write what is in each pack: without it neither stock nor price can be told.",
      },
    });
    expect(problems({ "price:line": "-5" })["price:line"]).toContain("“-5” can’t be read");
    expect(problems({ "came:line": "two" })["came:line"]).toContain("whole number");
    expect(problems({ "amount:line": "0 ft" })["amount:line"]).toContain("above zero");
  });

  it("asks for the rate of another currency, and for none of its own", () => {
    expect(Object.keys(problems({ currency: "EUR", "came:line": "two" })).sort()).toEqual([
      "came:line",
      "rate",
    ]);
    expect(problems({ currency: "EUR" })["rate"]).toContain("what one EUR cost in USD");
    expect(problems({ rate: "1.2" })["rate"]).toContain("leave the rate empty");
  });

  it("can have come neither tomorrow nor before it was ordered", () => {
    expect(problems({ receivedOn: "2026-03-12" })["receivedOn"]).toContain("still ahead");
    expect(problems({ receivedOn: "2026-03-01" })["receivedOn"]).toContain("ordered on 2 Mar 2026");
  });

  it("can share delivery over no line where none has a price", () => {
    const read = readReceiveOrder({ ...without("price:line"), delivery: "9" }, question);
    expect(read).toMatchObject({ problems: { delivery: expect.stringContaining("No line has a price") } });
  });

  it("books what came along free as a receipt of its own, at no price", () => {
    const extra = { "extra:1": "paper", "extraPacks:1": "2", "extraAmount:1": "50" };
    const [paid, free] = receipts({ ...AS_ORDERED, ...extra });
    expect(paid?.lines).toHaveLength(1);
    expect(free).toMatchObject({
      id: "key-free",
      kind: "free",
      deliveryMinor: 0,
      lines: [{ supplyId: "paper", purchaseLineId: null, packs: 2, packAmount: units(50), priceMinor: null }],
    });
    expect(problems({ "extraPacks:1": "2" })["extra:1"]).toContain("Choose which supply");
    expect(problems({ "extra:2": "paper" })).toHaveProperty(["extraPacks:2"]);
  });

  it("still receives what was ordered of an offer that was withdrawn", () => {
    const withdrawn = order({ lines: [orderLine({ offerRetired: true })] });
    expect(problems({}, { order: withdrawn })).toEqual({});
  });
});
