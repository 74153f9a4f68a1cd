import { describe, expect, it } from "vitest";
import { sittingCartons } from "#app/cartons/sitting-cartons.ts";
import { addDays } from "#lib/units/day";
import { pastMug } from "../../lib/cartons/idle/past-mugs";
import { cartonSupply, counted, onShelf, TODAY } from "./small-shelf";

const onShelfSince = (
  id: string,
  side: number,
  weeks: number,
  more: { useFirst?: boolean; onHand?: number } = {},
) =>
  onShelf(cartonSupply(id, [side, side, side], { useFirst: more.useFirst ?? false }), {
    stock: new Map([[id, counted(id, more.onHand ?? 10)]]),
    useDays: new Map([[id, [{ day: addDays(TODAY, -7 * weeks), cartons: 1 }]]]),
  });
const MUGS = [pastMug("a", { materials: 300, postage: 600 })];
const idsOf = (...cartons: ReturnType<typeof onShelfSince>[]) =>
  sittingCartons(cartons, MUGS, 25_400, "imperial").map(({ carton }) => carton.id);

describe("the cartons to look at", () => {
  it("are those that sit, silent longest first, and none that moves", () => {
    expect(
      idsOf(
        onShelfSince("moves", 12, 1, { onHand: 1 }),
        onShelfSince("sits", 12, 30),
        onShelfSince("longer", 12, 40),
      ),
    ).toEqual(["longer", "sits"]);
  });

  it("begin with what the seller wants used up, whether it sits or not", () => {
    expect(idsOf(onShelfSince("sits", 12, 40), onShelfSince("marked", 12, 1, { useFirst: true }))).toEqual([
      "marked",
      "sits",
    ]);
  });

  it("end with those in which nothing fits", () => {
    expect(idsOf(onShelfSince("tiny", 3, 50), onShelfSince("sits", 12, 30))).toEqual(["sits", "tiny"]);
  });

  it("leave out what is not there", () => {
    const gone = onShelf(cartonSupply("gone", [12, 12, 12]), {
      stock: new Map([["gone", counted("gone", 0)]]),
    });
    expect(sittingCartons([gone], MUGS, 25_400, "imperial")).toEqual([]);
  });
});
