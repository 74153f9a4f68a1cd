import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { problemsOf } from "#app/_parts/form-state.ts";
import { cushionSettingsFields } from "#app/paper-or-bubble/settings-fields.ts";
import { cushionSettingsForm } from "#app/paper-or-bubble/settings-form.ts";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";

const NONE = { paper: null, bubble: null, mixed: null };
const UNSEEN = { parcels: 0, broken: 0 };
const SEEN = { paper: { parcels: 120, broken: 2 }, bubble: UNSEEN, mixed: UNSEEN };
const read = (typed: Readonly<Record<string, string>>, minorDigits = 2) =>
  cushionSettingsForm(minorDigits).safeParse(typed);

describe("the form of what minutes and breakage count for", () => {
  it("takes nothing as not said, and nought as nought", () => {
    expect(read({}).data).toEqual({ hourMinor: null, terms: { minutes: NONE, brokenPerMille: NONE } });
    expect(read({ "minutes.paper": "0", "broken.bubble": "0" }).data?.terms).toEqual({
      minutes: { ...NONE, paper: 0 },
      brokenPerMille: { ...NONE, bubble: 0 },
    });
  });

  it("reads numbers with a point or a comma", () => {
    expect(
      read({ hour: "24.50", "minutes.paper": "6,5", "minutes.bubble": "4", "broken.paper": "1.2" }).data,
    ).toEqual({
      hourMinor: 2_450,
      terms: {
        minutes: { ...NONE, paper: 6.5, bubble: 4 },
        brokenPerMille: { ...NONE, paper: 12 },
      },
    });
  });

  it.each([
    [{ "minutes.paper": "-1" }, "minutes.paper"],
    [{ "minutes.mixed": "601" }, "minutes.mixed"],
    [{ "minutes.bubble": "four" }, "minutes.bubble"],
    [{ "broken.paper": "101" }, "broken.paper"],
    [{ "broken.bubble": "2 %" }, "broken.bubble"],
    [{ "broken.mixed": "1e1" }, "broken.mixed"],
    [{ hour: "-3" }, "hour"],
  ])("refuses %j at its field", (typed, field) => {
    const { error } = read(typed);
    expect(error === undefined ? [] : Object.keys(problemsOf(error))).toEqual([field]);
  });

  it("shows again what was typed", () => {
    const hundredths = fc.integer({ min: 0, max: 10_000 }).map((count) => String(count / 100));
    fc.assert(
      fc.property(hundredths, hundredths, fc.integer({ min: 0, max: 9_999 }), (broken, minutes, hour) => {
        const typed = { hour: (hour / 100).toFixed(2), "broken.paper": broken, "minutes.bubble": minutes };
        const { data } = read(typed);
        if (data === undefined) throw new RangeError(`${JSON.stringify(typed)} can be read`);
        const fields = cushionSettingsFields(data.terms, data.hourMinor, 2, {
          inStyles: CUSHION_STYLES,
          seen: SEEN,
        });
        const shown = fields.flatMap(({ name, value }) => (value === "" ? [] : [[name, value]]));
        expect(Object.fromEntries(shown)).toEqual(typed);
      }),
    );
  });

  it("tells how many arrived broken of late, in each style", () => {
    const fields = cushionSettingsFields({ minutes: NONE, brokenPerMille: NONE }, null, 2, {
      inStyles: CUSHION_STYLES,
      seen: SEEN,
    });
    const hints = new Map(fields.map((field) => [field.name, field]));
    expect(hints.get("broken.paper")).toMatchObject({ value: "", hint: "yours in a year: 2 of 120" });
    expect(hints.get("broken.bubble")).toMatchObject({ hint: "none sent yet" });
  });
});
