import { describe, expect, it } from "vitest";
import { habitsFields } from "#app/recipes/habits/habits-fields.ts";
import { habitsForm } from "#app/recipes/habits/habits-form.ts";
import { USUAL_HABITS } from "#lib/packing/habits";

/** The form as it is sent when nobody touched it. */
const untouched = (measures: "imperial" | "metric", habits = USUAL_HABITS) =>
  Object.fromEntries(
    habitsFields(habits, measures).flatMap((group) =>
      group.fields.map(({ name, value }) => [name, value ?? ""]),
    ),
  );
const read = (change: Readonly<Record<string, string>>) =>
  habitsForm(USUAL_HABITS, "imperial").safeParse({ ...untouched("imperial"), ...change });

describe("how a shop packs, as typed", () => {
  it.each(["imperial", "metric"] as const)(
    "stays exactly as it was where nothing was typed: %s",
    (measures) => {
      expect(habitsForm(USUAL_HABITS, measures).parse(untouched(measures))).toEqual(USUAL_HABITS);
      const own = { ...USUAL_HABITS, overlapUm: 33_333, hollowShare: 1 / 3, papersMg: 12_345 };
      expect(habitsForm(own, measures).parse(untouched(measures, own))).toEqual(own);
    },
  );

  it("takes what was changed and nothing else", () => {
    expect(read({ usual: "1 1/2 in", paper: "4", hollowShare: "75", closing: "single" }).data).toEqual({
      ...USUAL_HABITS,
      cushionUm: { ...USUAL_HABITS.cushionUm, usual: 38_100 },
      layers: { ...USUAL_HABITS.layers, "packing-paper": 4 },
      hollowShare: 0.75,
      closing: "single",
    });
  });

  it.each([
    [{ usual: "soft" }, "usual", /can’t be read/],
    [{ usual: "5 ft" }, "usual", /check its unit/],
    [{ smallBubble: "0" }, "smallBubble", /from 1 to 9/],
    [{ overlap: "0 in" }, "overlap", /more than zero/],
    [{ hollowShare: "120 %" }, "hollowShare", /At most 100 %/],
    [{ heavyFrom: "0 g" }, "heavyFrom", /more than zero/],
    [{ closing: "glue" }, "closing", /Choose how/],
  ])("is refused by its field: %o", (change, field, words) => {
    const [issue] = read(change).error?.issues ?? [];
    expect(issue?.path).toEqual([field]);
    expect(issue?.message).toMatch(words);
  });
});
