import { describe, expect, it } from "vitest";
import { changedDraft } from "#app/pack/draft-change.ts";
import { draftForm } from "#app/pack/draft-form.ts";
import { draftOfForm } from "#app/pack/draft-of-form.ts";
import { draftFor } from "#app/pack/packing-draft.ts";
import { day } from "#lib/units/day";
import { SMALL_CHOICES } from "./small-choices";

const CHANGES = [
  { kind: "add-item-type", itemTypeId: "vase" },
  { kind: "add-line", supplyId: "kraft", key: "more" },
  { kind: "carton", index: 0, supplyId: null },
  { kind: "carton-text", index: 0, part: "sizes", text: "12 x 9 x 8" },
  { kind: "carton-text", index: 0, part: "cut", text: "6" },
  { kind: "text", part: "orders", text: "1041, 1042" },
  { kind: "text", part: "scale", text: "2 lb 15 oz" },
  { kind: "text", part: "postage", text: "9.80" },
  { kind: "text", part: "note", text: "ribbon" },
  { kind: "tick", part: "posted", on: true },
  { kind: "tick", part: "unusual", on: true },
] as const;

describe("a kept parcel back on the bench", () => {
  it("is sent again as it was, if nothing is changed", () => {
    let draft = draftFor(SMALL_CHOICES, "mug", "key-00001", day("2026-03-09"));
    for (const change of CHANGES) {
      draft = changedDraft(draft, change, SMALL_CHOICES);
      const form = draftForm(draft, SMALL_CHOICES.supplies);
      expect(draftForm(draftOfForm(form, SMALL_CHOICES), SMALL_CHOICES.supplies)).toEqual(form);
    }
    expect(draftForm(draft, SMALL_CHOICES.supplies).lines?.length).toBeGreaterThan(2);
  });

  it("goes without a supply that the shop no longer has", () => {
    const form = draftForm(
      draftFor(SMALL_CHOICES, "mug", "key-00001", day("2026-03-09")),
      SMALL_CHOICES.supplies,
    );
    const supplies = SMALL_CHOICES.supplies.filter((supply) => supply.id !== "tissue");
    const opened = draftOfForm(form, { ...SMALL_CHOICES, supplies });
    expect(opened.lines.map((line) => line.supplyId)).not.toContain("tissue");
    expect(opened.lines).toHaveLength((form.lines?.length ?? 0) - 1);
  });
});
