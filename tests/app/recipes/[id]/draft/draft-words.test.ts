import { describe, expect, it } from "vitest";
import {
  acceptable,
  leftCushion,
  leftOutWords,
  refusalWords,
  tightWords,
} from "#app/recipes/[id]/draft/draft-words.ts";
import type { CartonRoom } from "#lib/packing/fill/carton-room";
import { MICROMETRES_PER_INCH, parseLength } from "#lib/units/length";

const inch = (count: number) => count * MICROMETRES_PER_INCH;
const tight = (cartonId: string, leaves: number, change: Partial<CartonRoom> = {}) => ({
  cartonId,
  room: {
    kind: leaves < 0 ? ("does-not-fit" as const) : ("too-tight" as const),
    turned: { lengthUm: 1, widthUm: 1, heightUm: 1 },
    leavesUm: inch(leaves),
    tightest: "height" as const,
    askedUm: inch(2),
    voidMl: 0,
    ...change,
  },
});
const nameOf = (id: string) => id.replace("cube-", "Carton ");

describe("why there is no draft", () => {
  it("says what a carton leaves or lacks", () => {
    expect(tightWords(tight("cube-8", 1.285), nameOf, "imperial")).toBe(
      "Carton 8 leaves 1.28 in of the 2 in asked for.",
    );
    expect(tightWords(tight("cube-4", -0.25), nameOf, "imperial")).toBe(
      "Carton 4 is ½ in too low for the wrapped piece.",
    );
    expect(tightWords(tight("cube-8", 1.285), nameOf, "metric")).toContain("leaves 3.2 cm of the 5.1 cm");
  });

  it.each([1.285, 0.999, 1.7, 0.004, 0.3])("offers no more cushion than is left: %f in", (leaves) => {
    for (const measures of ["imperial", "metric"] as const) {
      const read = parseLength(leftCushion(inch(leaves), measures), measures);
      expect(read.kind === "length" ? read.um : Number.NaN).toBeLessThanOrEqual(inch(leaves));
    }
  });

  it("offers the smallest cartons that leave half of what is asked for, else the one that leaves most", () => {
    const offered = (...leaves: number[]) =>
      acceptable(leaves.map((left, index) => tight(String(index), left))).map(({ cartonId }) => cartonId);
    expect(offered(-1, 0.4, 1, 1.9, 1.2, 1.5)).toEqual(["2", "3", "4"]);
    expect(offered(-1, 0.2, 0.4)).toEqual(["2"]);
    expect(offered(-1, 0)).toEqual([]);
  });

  it("names the way out", () => {
    expect(refusalWords({ kind: "no-carton", tight: [] }, nameOf, "imperial")).toMatch(/under Supplies/);
    expect(refusalWords({ kind: "no-carton", tight: [tight("cube-8", 1)] }, nameOf, "imperial")).toMatch(
      /accept less/,
    );
    expect(
      refusalWords({ kind: "unsuited-supply", job: "seal", supplyId: "Brown tape" }, nameOf, "imperial"),
    ).toBe(
      "Brown tape was taken for closing the carton, but its sizes or its use unit do not say enough: complete it under Supplies.",
    );
  });

  // By hand: 11.31 x 11.31 x 11.63 in, each up to the next half inch.
  it("says which carton would go round the inner one", () => {
    const least = { lengthUm: inch(11.31), widthUm: inch(11.31), heightUm: inch(11.63) };
    const carton = { supplyId: "cube-9", inside: least, boardUm: 4_000, massMg: null };
    const draft = { kind: "no-outer" as const, carton, least, gapUm: inch(1), tight: [] };
    expect(refusalWords(draft, nameOf, "imperial")).toBe(
      "No carton in use goes round Carton 9 with 1 in all round. One of 11½ × 11½ × 12 in inside or more would do: add it under Supplies, or draft with one carton.",
    );
    expect(refusalWords(draft, nameOf, "metric")).toContain(
      "2.5 cm all round. One of 29 × 29 × 30 cm inside",
    );
  });

  it("says what nothing on the shelf does", () => {
    expect(leftOutWords([])).toBeNull();
    expect(leftOutWords(["divide", "seal"])).toBe(
      "Nothing on the shelf for dividing the set, closing the carton: left out.",
    );
  });
});
