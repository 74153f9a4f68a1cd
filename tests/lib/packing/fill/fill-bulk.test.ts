import { describe, expect, it } from "vitest";
import { fillBulk } from "#lib/packing/fill/fill-bulk";
import { USUAL_HABITS } from "#lib/packing/habits";
import { card, paper } from "../bench-shop";

describe("fillBulk", () => {
  it("is the usual one until the shop has measured its own", () => {
    expect(fillBulk(paper, USUAL_HABITS, "firm")).toBe(USUAL_HABITS.bulkUm.firm["packing-paper"]);
    expect(fillBulk({ ...paper, bulkUm: 1800 }, USUAL_HABITS, "firm")).toBe(1800);
  });

  it("is none for what is no fill", () => {
    expect(fillBulk(card, USUAL_HABITS, "firm")).toBeNull();
  });
});
