import { describe, expect, it } from "vitest";
import { askedDay } from "#app/this-week/asked-day.ts";

describe("asked day", () => {
  it("is the day in the address", () => {
    expect(askedDay("2026-11-25")).toEqual({ kind: "day", day: "2026-11-25" });
  });

  it("is none where the address names none", () => {
    expect(askedDay(undefined)).toEqual({ kind: "none" });
  });

  it("is unreadable where the day does not exist", () => {
    expect(askedDay("2026-11-31")).toEqual({ kind: "unreadable", text: "2026-11-31" });
  });
});
