import { describe, expect, it } from "vitest";
import { lineText, steppedAmount } from "#app/pack/card-line.ts";
import { changedDraft, type DraftChange } from "#app/pack/draft-change.ts";
import { draftForm } from "#app/pack/draft-form.ts";
import { expectedWeight } from "#app/pack/expected-weight.ts";
import { draftFor, type PackingDraft } from "#app/pack/packing-draft.ts";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { SMALL_CHOICES } from "./small-choices";

const start = draftFor(SMALL_CHOICES, "mug", "key-00001", SMALL_CHOICES.today);

function changed(...changes: readonly DraftChange[]): PackingDraft {
  return changes.reduce((draft, change) => changedDraft(draft, change, SMALL_CHOICES), start);
}

describe("a draft", () => {
  it("starts with the carton and zone that the item type went out with last", () => {
    expect(start.cartons.map((carton) => carton.supplyId)).toEqual(["cube-12"]);
    expect(start.zoneId).toBe("near");
  });

  it("takes the wraps by the piece, the closing once, and the carton by all pieces", () => {
    const draft = changed({ kind: "pieces", index: 0, pieces: 3 });
    expect(draft.lines.map((line) => line.amount)).toEqual([AMOUNT_PER_UNIT, 3 * AMOUNT_PER_UNIT]);
    expect(draft.cartons.map((carton) => carton.supplyId)).toEqual(["cube-12"]);
  });

  it("says where there are more pieces than the recipe's cartons take", () => {
    expect(changed({ kind: "pieces", index: 0, pieces: 5 }).overfull).toBe(true);
  });

  it("closes a mixed parcel once", () => {
    const draft = changed({ kind: "add-item-type", itemTypeId: "vase" });
    expect(draft.lines.filter((line) => line.supplyId === "tape")).toHaveLength(1);
    expect(draft.lines.filter((line) => line.supplyId === "tissue")).toHaveLength(2);
  });

  it("shows a line in the unit that its recipe was typed in", () => {
    expect(start.lines.map((line) => lineText(line, line.supplyId === "tape" ? "foot" : "sheet"))).toEqual([
      "⅓ sheet",
      "36 in",
    ]);
  });

  it("comes back to the same amount after thirds up and down, and never goes below nothing", () => {
    const [line] = start.lines;
    const up = line && { ...line, amount: steppedAmount(line, 3, 1) };
    expect(up?.amount).toBe(8000);
    expect(up && steppedAmount(up, 3, -1)).toBe(line?.amount);
    expect(line && steppedAmount(line, 1, -1)).toBe(0);
  });

  it("takes a substitute in its own unit, at the amount that stands in", () => {
    const key = start.lines[0]?.key ?? "";
    const same = changed({ kind: "substitute", key, supplyId: "gift-wrap", amount: amount(4000) });
    expect(same.lines[0]).toMatchObject({ supplyId: "gift-wrap", amount: 4000, recipeStepId: "mug-wrap" });
    const other = changed({ kind: "substitute", key, supplyId: "kraft", amount: amount(AMOUNT_PER_UNIT) });
    expect(other.lines[0]).toMatchObject({ supplyId: "kraft", amount: AMOUNT_PER_UNIT, shownUnit: "foot" });
  });

  it("puts a second carton inside the first for a double box, and takes it out again", () => {
    expect(changed({ kind: "double-box", on: true }).cartons).toHaveLength(2);
    expect(changed({ kind: "double-box", on: true }, { kind: "double-box", on: false }).cartons).toHaveLength(
      1,
    );
  });

  it("keeps a chosen day for the next parcel, under a new key", () => {
    const next = changed(
      { kind: "day", packedOn: "2026-03-02" as typeof start.packedOn },
      { kind: "next-parcel", id: "key-00002" },
    );
    expect(next).toMatchObject({ id: "key-00002", packedOn: "2026-03-02" });
  });
});

describe("a draft as it is sent", () => {
  it("leaves lines of nothing out and splits references at commas", () => {
    const key = start.lines[0]?.key ?? "";
    const draft = changed(
      { kind: "line-amount", key, amount: amount(0) },
      { kind: "text", part: "orders", text: "A-1, A-2, A-1" },
    );
    const form = draftForm(draft, SMALL_CHOICES.supplies);
    expect(form.lines).toMatchObject([{ supplyId: "tape", amount: 36_000, value: "36", unit: "in" }]);
    expect(form.orders).toEqual([{ reference: "A-1" }, { reference: "A-2" }]);
  });
});

describe("the expected weight", () => {
  it("adds pieces, card and carton", () => {
    // 370 g + 1/3 sheet of 1 g + 3 ft of 1 g + a carton of 1 g
    expect(expectedWeight(start, SMALL_CHOICES)).toEqual({ kind: "expected", mg: 374_333 });
  });

  it("names what nobody weighed", () => {
    const draft = changed({ kind: "add-item-type", itemTypeId: "vase" });
    expect(expectedWeight(draft, SMALL_CHOICES)).toMatchObject({ kind: "part-known", unknown: ["Bud vase"] });
  });
});
