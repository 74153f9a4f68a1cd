import { describe, expect, it } from "vitest";
import { problemsOf } from "#app/_parts/form-state.ts";
import { cartonSettingsFields } from "#app/cartons/settings-fields.ts";
import { cartonSettingsForm } from "#app/cartons/settings-form.ts";
import { USUAL_CARTON_SETTINGS } from "#prisma/records/carton-terms";

const TYPED = { slowWeeks: "8", slowMonths: "6", sitsWeeks: "26", sitsMonths: "24", cutMinutes: "5" };
const SHOP = { measures: "imperial", minorDigits: 2 } as const;

const read = (change: Record<string, string> = {}) =>
  cartonSettingsForm("imperial", 2).safeParse({ ...TYPED, ...change });

describe("the form of how a shop judges its cartons", () => {
  it("reads weeks, months, bulge, minutes and an hour's price", () => {
    expect(read({ bulge: "1/4 in", hour: "24.50", cutMinutes: "3" }).data).toEqual({
      ageing: {
        slow: { silentWeeks: 8, coverMonths: 6 },
        sits: { silentWeeks: 26, coverMonths: 24 },
      },
      bulgeUm: 6_350,
      cutMinutes: 3,
      hourMinor: 2_450,
    });
  });

  it("counts no hour and no bulge where the fields are empty", () => {
    expect(read().data).toMatchObject({ bulgeUm: 0, hourMinor: null });
  });

  it.each([
    [{ slowWeeks: "0" }, "slowWeeks"],
    [{ sitsMonths: "two" }, "sitsMonths"],
    [{ sitsWeeks: "7" }, "sitsWeeks"],
    [{ sitsMonths: "5" }, "sitsMonths"],
    [{ bulge: "3 in" }, "bulge"],
    [{ cutMinutes: "0" }, "cutMinutes"],
    [{ hour: "-3" }, "hour"],
  ])("refuses %j at its field", (change, field) => {
    const { error } = read(change);
    expect(error === undefined ? [] : Object.keys(problemsOf(error))).toEqual([field]);
  });

  it("shows what it would read again as the same", () => {
    const own = { ...USUAL_CARTON_SETTINGS, bulgeUm: 6_350, hourMinor: 2_450 };
    for (const settings of [USUAL_CARTON_SETTINGS, own]) {
      const fields = cartonSettingsFields(settings, SHOP).flatMap(({ name, value }) =>
        value === undefined || value === "" ? [] : [[name, value]],
      );
      expect(cartonSettingsForm("imperial", 2).parse(Object.fromEntries(fields))).toEqual(settings);
    }
  });
});
