import { describe, expect, it } from "vitest";
import { draftFor } from "#app/pack/packing-draft.ts";
import { spoiltForm } from "#app/pack/spoilt-form.ts";
import { spoiltFormOf, spoiltLines, spoiltWords } from "#app/pack/spoilt-lines.ts";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { parseAmount } from "#lib/units/amount-text";
import { day } from "#lib/units/day";
import { SMALL_CHOICES } from "./small-choices";

const mug = draftFor(SMALL_CHOICES, "mug", "parcel-0001", day("2026-03-10"));

describe("what may be spoilt at the bench", () => {
  it("is each supply of the card once, its carton, and what else was asked for, one unit as the card shows it", () => {
    const twice = { ...mug, lines: [...mug.lines, ...mug.lines] };
    const lines = spoiltLines(twice, ["foam", "tissue", "gone"], SMALL_CHOICES);
    // The card's tape is written in inches: one unit of it is an inch, a twelfth of its foot.
    expect(lines.map(({ supply, line }) => [supply.id, line.amount / AMOUNT_PER_UNIT])).toEqual([
      ["tissue", 1],
      ["tape", 1 / 12],
      ["cube-12", 1],
      ["foam", 1],
    ]);
    expect(lines.map(spoiltWords)).toEqual([
      "1 sheet of Tissue",
      "1 in of Carton tape",
      "1 × Carton 12",
      "1 × Foam",
    ]);
  });

  it("is sent with an amount that reads back from its value and unit", () => {
    for (const spoilt of spoiltLines(mug, ["bubble"], SMALL_CHOICES)) {
      const form = spoiltForm.parse({ ...spoiltFormOf(spoilt, "torn"), shownAfter: 7 });
      const read = parseAmount(`${form.value} ${form.unit}`.trim(), spoilt.supply.unit, "imperial");
      expect(read).toMatchObject({ kind: "amount", amount: form.amount });
    }
  });
});
