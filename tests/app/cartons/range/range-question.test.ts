import { describe, expect, it } from "vitest";
import { packedLoads } from "#app/cartons/packed-loads.ts";
import { rangeQuestion } from "#app/cartons/range/range-question.ts";
import type { CartonShelf } from "#app/cartons/read-carton-shelf.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { addDays, day } from "#lib/units/day";
import { USUAL_CARTON_SETTINGS } from "#prisma/records/carton-terms";
import type { PackedKind } from "#prisma/records/packed-kinds";
import { CENT, IN, inches, MUG, MUG_TERMS } from "../../../lib/cartons/choice/mug-bench";
import { cartonSupply, counted, DOLLARS, onShelf, TODAY } from "../small-shelf";

const cube = (side: number, onHand: number) => {
  const id = `cube-${side}`;
  return onShelf(cartonSupply(id, [side, side, side]), {
    stock: new Map([[id, counted(id, onHand)]]),
    replacement: new Map([[id, 10 * side * CENT]]),
  });
};
const loadGround: CartonShelf["loadGround"] = {
  wrappedOf: () => ({ blocks: MUG.pieces, ml: MUG.ml, massMg: 395_000, cushionUm: IN, isFromSizes: false }),
  insideOf: () => inches(12, 12, 12),
  papersMg: 10_000,
};
const MUGS: PackedKind = {
  pieces: [{ itemTypeId: "mug", pieces: 1 }],
  style: "paper",
  cartonId: "cube-12",
  parcels: 40,
  lastPackedOn: day("2026-03-10"),
};
const wrap = {
  habits: USUAL_HABITS,
  shelf: { supplies: [], cartons: [], undescribed: [] },
  measures: "imperial",
} as const;
const SHOP_TERMS = { terms: MUG_TERMS, fillName: "paper", notKnown: [] };
const SHELF: CartonShelf = {
  today: TODAY,
  cartons: [cube(8, 5), cube(12, 20)],
  unsized: [],
  itemTypes: [],
  settings: USUAL_CARTON_SETTINGS,
  rangeSizes: "",
  habits: USUAL_HABITS,
  wrap,
  loadGround,
  packed: packedLoads([MUGS, { ...MUGS, cartonId: "cube-8", parcels: 2 }], loadGround),
  terms: SHOP_TERMS,
  termsIn: (style) => (style === "bubble" ? null : SHOP_TERMS),
  postage: { card: null, zones: [] },
};
const asked = (text = "10 x 10 x 10 in; 1.10", shelf = SHELF) => {
  const read = rangeQuestion(shelf, "paper", text, DOLLARS);
  if (read.kind !== "question") throw new Error(JSON.stringify(read));
  return read.question;
};

describe("the question of which sizes to keep", () => {
  it("has today's cartons first, then those that could be bought, with the parcels of the year", () => {
    const { candidates, parcels, task } = asked();
    expect(candidates.map(({ name, isToday }) => [name, isToday])).toEqual([
      ["Carton 8 × 8 × 8", true],
      ["Carton 12 × 12 × 12", true],
      ["10 x 10 x 10 in", false],
    ]);
    expect(parcels).toBe(42);
    expect(task).toMatchObject({ today: [0, 1], onHand: [5, 20, null], most: 3 });
    expect(task.offered.map(({ value }) => value / CENT)).toEqual([80, 120, 110]);
  });

  it("does not offer a size twice that stands on the shelf, to two millimetres", () => {
    expect(asked("12 x 12 x 12 in\n30.5 x 30.5 x 30.5 cm").candidates).toHaveLength(2);
    expect(asked("12 x 12 x 12.2 in").candidates).toHaveLength(3);
  });

  it("is the same question tomorrow and after a count, another where a price or a size changed", () => {
    const { hash } = asked();
    expect(asked(undefined, { ...SHELF, today: addDays(TODAY, 1) }).hash).toBe(hash);
    expect(asked(undefined, { ...SHELF, cartons: [cube(8, 4), cube(12, 19)] }).hash).toBe(hash);
    expect(asked("10 x 10 x 10 in; 1.20").hash).not.toBe(hash);
    expect(asked("10 x 10 x 9 in; 1.10").hash).not.toBe(hash);
    expect(asked(undefined, { ...SHELF, packed: packedLoads([MUGS], loadGround) }).hash).not.toBe(hash);
  });

  it("is of ten sizes at most", () => {
    const many = Array.from({ length: 12 }, (_, at) => `${at + 3} x 3 x 3 in; 1`).join("\n");
    expect(asked(many).task.most).toBe(10);
  });

  it("is none without parcels, fill or sizes, and names the line that can't be read", () => {
    const reading = (shelf: CartonShelf, text = "", style: "paper" | "bubble" = "paper") =>
      rangeQuestion(shelf, style, text, DOLLARS);
    const nothing = { loads: [], unknown: new Map(), crowded: 0 };
    expect(reading({ ...SHELF, packed: nothing })).toEqual({ kind: "none", reason: "no-parcels" });
    expect(reading(SHELF, "", "bubble")).toEqual({ kind: "none", reason: "no-fill" });
    expect(reading({ ...SHELF, cartons: [] })).toEqual({ kind: "none", reason: "no-sizes" });
    expect(reading(SHELF, "wide")).toMatchObject({
      kind: "unreadable",
      message: expect.stringContaining("Line 1"),
    });
  });
});
