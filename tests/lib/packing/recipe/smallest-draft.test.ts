import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { smallestDraft } from "#lib/packing/recipe/smallest-draft";
import { MICROMETRES_PER_INCH } from "#lib/units/length";
import { cartonOf, cartonTape, householdTape, mug, paper, smallBubble, tissue } from "../bench-shop";

const shelf = [tissue, paper, smallBubble, householdTape, cartonTape];
const request = {
  piece: mug,
  pieces: 1,
  habits: USUAL_HABITS,
  supplies: chosenSupplies("paper", shelf),
  measures: "imperial" as const,
};
const cube = (side: number) => cartonOf(side, side, side);

describe("a draft in the smallest carton", () => {
  it("takes the smallest that leaves 2 in all round, whatever the order of the list", () => {
    const draft = smallestDraft(request, [cube(12), cube(8), cube(9), cube(6)]);
    expect(draft).toMatchObject({ kind: "drafted", carton: { supplyId: "carton-9-9-9" } });
  });

  // 3.25 + 1.25 in of handle, 0.1 in of crumpled paper on it and paper round all: some 4.6 in, so 1.7 in in an 8 in cube.
  it("tells what the smaller ones leave", () => {
    const draft = smallestDraft(request, [cube(12), cube(8), cube(6)]);
    const tight = "tight" in draft ? draft.tight : [];
    expect(tight.map(({ cartonId, room }) => [cartonId, room.kind])).toEqual([
      ["carton-6-6-6", "too-tight"],
      ["carton-8-8-8", "too-tight"],
    ]);
    expect((tight[1]?.room.leavesUm ?? 0) / MICROMETRES_PER_INCH).toBeCloseTo(1.7, 1);
  });

  it("says that none will do, with all that were tried", () => {
    const draft = smallestDraft(request, [cube(4), cube(8)]);
    expect(draft).toMatchObject({ kind: "no-carton" });
    expect("tight" in draft ? draft.tight.map(({ room }) => room.kind) : []).toEqual([
      "does-not-fit",
      "too-tight",
    ]);
    expect(smallestDraft(request, [])).toEqual({ kind: "no-carton", tight: [] });
  });

  it("takes a smaller one where the shop asks for less", () => {
    const habits = { ...USUAL_HABITS, cushionUm: { ...USUAL_HABITS.cushionUm, usual: 38_100 } };
    expect(smallestDraft({ ...request, habits }, [cube(12), cube(8)])).toMatchObject({
      kind: "drafted",
      carton: { supplyId: "carton-8-8-8" },
    });
  });

  it("does not blame a carton for a bad description or a supply", () => {
    const flat = { ...mug, body: { kind: "cylinder" as const, acrossUm: 0, heightUm: 1 } };
    expect(smallestDraft({ ...request, piece: flat }, [cube(12)]).kind).toBe("piece-problems");
    const supplies = { ...request.supplies, seal: paper };
    expect(smallestDraft({ ...request, supplies }, [cube(12)])).toMatchObject({
      kind: "unsuited-supply",
      job: "seal",
    });
  });
});
