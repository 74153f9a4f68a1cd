import { describe, expect, it } from "vitest";
import { supplyBook } from "#lib/replenishment/simulation/supply-book";

// Whole runs, day by day, are worked by hand in played-run.test.ts.
const supply = {
  supplyId: "a",
  startStock: 3,
  arrivals: [{ dueDay: 1, amount: 5 }],
  unitValue: 10,
  litresPerUnit: 0.5,
};

describe("the book of a supply", () => {
  it("begins with the stock and what is already on order", () => {
    const book = supplyBook(supply, { unmet: "met-later", countedFrom: 0 });
    expect(book.state()).toEqual({
      onHand: 3,
      owed: 0,
      onOrder: [{ expectedDay: 1, amount: 5 }],
      position: 8,
    });
    expect(book.held()).toEqual({ value: 30, litres: 1.5 });
  });

  it("takes in what is due, once, and ends a cycle", () => {
    const book = supplyBook(supply, { unmet: "met-later", countedFrom: 0 });
    book.receive(0);
    book.use(0, 4);
    expect(book.state()).toMatchObject({ onHand: 0, owed: 1, position: 4 });
    book.receive(1);
    book.receive(1);
    book.use(1, 1);
    expect(book.state()).toEqual({ onHand: 3, owed: 0, onOrder: [], position: 3 });
    expect(book.figures()).toMatchObject({ cycles: 1, shortCycles: 1, unmet: 1, daysOutOfStock: 1 });
  });

  it("counts what comes back as stock, and as need taken back", () => {
    const book = supplyBook(supply, { unmet: "met-later", countedFrom: 0 });
    book.use(0, 5);
    book.use(0, -1);
    expect(book.state()).toMatchObject({ onHand: 0, owed: 1 });
    expect(book.figures()).toMatchObject({ need: 4, unmet: 1 });
  });

  it("counts no cycle that began before the first counted day", () => {
    const book = supplyBook(supply, { unmet: "met-later", countedFrom: 2 });
    for (const dueDay of [4, 6]) {
      book.order(0, { dueDay, expectedDay: dueDay, amount: 1 }, { goods: 1, delivery: 0 });
    }
    const cyclesAt = (day: number) => {
      book.receive(day);
      book.use(day, 0);
      return book.figures().cycles;
    };
    expect([1, 2, 4, 6].map(cyclesAt)).toEqual([0, 0, 0, 1]);
  });

  it("keeps orders from the first counted day on", () => {
    const book = supplyBook(supply, { unmet: "met-later", countedFrom: 2 });
    const coming = { dueDay: 9, expectedDay: 9, amount: 1 };
    book.order(1, coming, { goods: 4, delivery: 1 });
    book.order(2, coming, { goods: 5, delivery: 2 });
    book.use(2, 0);
    expect(book.figures()).toMatchObject({ orders: 1, goodsCost: 5, deliveryCost: 2 });
    expect(book.state().position).toBe(10);
  });
});
