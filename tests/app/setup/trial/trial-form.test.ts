import { describe, expect, it } from "vitest";
import {
  areSame,
  readTrial,
  termsOfSettings,
  trialForm,
  typedSettings,
} from "#app/setup/trial/trial-form.ts";

const PRESENT = { promise: { goal: "cycles", perMille: 950 }, coverWeeks: 6, reviewDays: 7 } as const;

describe("settings to try in the address", () => {
  it("are none where nothing is asked, whatever else the address says", () => {
    expect(readTrial({}, PRESENT)).toEqual({ kind: "none" });
    expect(readTrial({ kept: "yes" }, PRESENT)).toEqual({ kind: "none" });
  });

  it("are as the shop has them but for what is asked", () => {
    expect(readTrial({ reviewDays: "14" }, PRESENT)).toEqual({
      kind: "settings",
      settings: { ...PRESENT, reviewDays: 14 },
      over: "coming",
    });
    expect(readTrial({ promise: "share:980", over: "past" }, PRESENT)).toEqual({
      kind: "settings",
      settings: { ...PRESENT, promise: { goal: "share", perMille: 980 } },
      over: "past",
    });
  });

  it.each([
    [{ reviewDays: "many" }, { reviewDays: "Write a whole number from 1 to 60." }],
    [{ reviewDays: "61" }, { reviewDays: "Write a whole number from 1 to 60." }],
    [{ reviewDays: "" }, { reviewDays: "Write a whole number from 1 to 60." }],
    [{ coverWeeks: "0" }, { coverWeeks: "Write a whole number from 1 to 104." }],
    [{ coverWeeks: ["4", "8"] }, { coverWeeks: "Write a whole number from 1 to 104." }],
    [{ promise: "cycles:1000" }, { promise: "Choose what the stock should do." }],
    [{ over: "next-year" }, { over: "Choose the coming weeks or the past year." }],
  ])("name the field that can't be read of %o, and the way out", (query, problems) => {
    expect(readTrial(query, PRESENT)).toEqual({ kind: "unreadable", problems });
  });

  it("come back as they were typed into the form that keeps them", () => {
    const tried = { promise: { goal: "share", perMille: 995 }, coverWeeks: 10, reviewDays: 21 } as const;
    expect(trialForm.parse(typedSettings(tried))).toEqual(tried);
    expect(areSame(tried, { ...tried })).toBe(true);
    expect(areSame(tried, { ...tried, coverWeeks: 11 })).toBe(false);
    expect(termsOfSettings(tried)).toEqual({
      goal: { kind: "share", level: 0.995 },
      coverWeeks: 10,
      reviewDays: 21,
    });
  });
});
