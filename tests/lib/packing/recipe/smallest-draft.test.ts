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

describe("a draft of a box in a box", () => {
  const boarded = (side: number) => ({ ...cube(side), boardUm: 4_000 });

  // By hand: the inner carton is the 9 in cube of above. Board of 4 mm makes it 9.31 in flat and 9.63 in high; 1 in of
  // gap on both sides asks for 11.31 x 11.31 x 11.63 in.
  it("takes the smallest inner carton with its cushion, and the smallest that leaves the gap round it", () => {
    const cartons = [16, 12, 11, 10, 9, 8].map(boarded);
    const draft = smallestDraft(request, cartons, cartons);
    expect(draft).toMatchObject({
      kind: "drafted",
      carton: { supplyId: "carton-9-9-9" },
      outer: { carton: { supplyId: "carton-12-12-12" }, room: { kind: "fits" } },
      recipe: { cartons: [{ upTo: 1, supplyId: "carton-12-12-12" }] },
    });
    const steps = draft.kind === "drafted" ? draft.recipe.steps : [];
    expect(steps.filter(({ job }) => job === "seal").map(({ words }) => words.slice(0, 23))).toEqual([
      "Close the inner carton ",
      "Close the outer carton ",
    ]);
    expect(steps.filter(({ supplyId }) => supplyId === "carton-9-9-9")).toHaveLength(1);
    const gap = draft.kind === "drafted" ? (draft.outer?.room.leavesUm ?? 0) : 0;
    expect(gap / MICROMETRES_PER_INCH).toBeCloseTo((12 - 9 - 4 * (4 / 25.4)) / 2, 2);
  });

  it("says which inside would do where none goes round it", () => {
    const draft = smallestDraft(request, [boarded(9)], [9, 10, 11].map(boarded));
    expect(draft).toMatchObject({ kind: "no-outer", carton: { supplyId: "carton-9-9-9" } });
    const least = draft.kind === "no-outer" ? draft.least : { lengthUm: 0, widthUm: 0, heightUm: 0 };
    expect(least.lengthUm / MICROMETRES_PER_INCH).toBeCloseTo(11.31, 2);
    expect(least.heightUm / MICROMETRES_PER_INCH).toBeCloseTo(11.63, 2);
  });

  it("does not look for an outer carton before there is an inner one", () => {
    expect(smallestDraft(request, [cube(4)], [cube(20)]).kind).toBe("no-carton");
  });
});
