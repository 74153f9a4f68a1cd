import { describe, expect, it } from "vitest";
import { clockText } from "#app/pack/clock-text.ts";

const at = (text: string): number => Date.parse(text);

describe("a time on the shop's clock", () => {
  it("is told by hours and minutes on the same day of the shop", () => {
    expect(clockText(at("2026-11-25T23:05:00Z"), at("2026-11-26T04:30:00Z"), "America/New_York")).toBe(
      "18:05",
    );
    expect(clockText(at("2026-11-25T00:00:00Z"), at("2026-11-25T09:00:00Z"), "Etc/UTC")).toBe("00:00");
  });

  it("has its day before it on another day of the shop", () => {
    expect(clockText(at("2026-11-24T14:05:00Z"), at("2026-11-25T09:00:00Z"), "Etc/UTC")).toBe(
      "Tue 24 Nov, 14:05",
    );
  });
});
