import { describe, expect, it } from "vitest";
import { firstToUseUp, type ShelvedSize } from "#lib/cartons/idle/first-to-use-up";

const size = (id: string, more: Partial<ShelvedSize> = {}): ShelvedSize => ({
  ...{ id, onHand: 4, ageing: "sits", useFirst: false, silentWeeks: 30, fitting: 3 },
  ...{ moneyValue: 100, roomMl: 50 },
  ...more,
});

describe("the order to use up what sits", () => {
  it("is what the seller marked, then silence, then money, then room", () => {
    const list = firstToUseUp([
      size("roomy", { roomMl: 80 }),
      size("plain"),
      size("unpriced", { moneyValue: null }),
      size("dear", { moneyValue: 900 }),
      size("silent", { silentWeeks: 60 }),
      size("marked", { useFirst: true, ageing: "moves", silentWeeks: 1 }),
    ]);
    expect(list.map(({ cartonId }) => cartonId)).toEqual([
      "marked",
      "silent",
      "dear",
      "roomy",
      "plain",
      "unpriced",
    ]);
    expect(list.map(({ reason }) => reason)).toEqual(["marked", "sits", "sits", "sits", "sits", "sits"]);
  });

  it("leaves out what moves, what is not there, and what nothing fits", () => {
    const list = firstToUseUp([
      size("moves", { ageing: "moves" }),
      size("gone", { onHand: 0 }),
      size("unfit", { fitting: 0 }),
      size("uncounted", { onHand: null }),
    ]);
    expect(list.map(({ cartonId }) => cartonId)).toEqual(["uncounted"]);
  });
});
