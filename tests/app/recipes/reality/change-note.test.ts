import { describe, expect, it } from "vitest";
import { changeNote } from "#app/recipes/reality/change-note.ts";
import { proposal, STEPS } from "./reality-fixture";

describe("the note of a card that was changed from the counts", () => {
  it("says what changed and why, before what the note said already", () => {
    const fill = STEPS.get("fill");
    if (fill === undefined) throw new Error("no step");
    const said = "“Fill” takes 13 sheets instead of 11 sheets, as 8 counts say.";
    expect(changeNote(fill, proposal(), "sheet")).toBe(said);
    const noted = { ...fill, recipe: { ...fill.recipe, note: "Weighed twice." } };
    expect(changeNote(noted, proposal(), "sheet")).toBe(`${said} Weighed twice.`);
  });
});
