import { describe, expect, it } from "vitest";
import { formatVolume, parseVolume } from "#lib/units/volume";

describe("a volume as typed", () => {
  // One inch is 25.4 mm exactly (1959 agreement), so a cubic foot is 28 316.846592 ml and a cubic inch 16.387064 ml.
  it.each([
    ["1.9 cu ft", 53_802],
    ["1 cubic foot", 28_317],
    ["100 cu in", 1_639],
    ["25 l", 25_000],
    ["0.05 m³", 50_000],
    ["0.05 m3", 50_000],
    ["750 ml", 750],
    ["40 x 40 x 30 cm", 48_000],
    ["12 x 12 x 12 in", 28_317],
    ["1½ cu ft", 42_475],
  ])("%s is %i ml", (text, ml) => {
    expect(parseVolume(text, "imperial")).toEqual({ kind: "volume", ml, typed: text });
  });

  it("takes sides without a unit in the shop's measures", () => {
    expect(parseVolume("10 x 10 x 10", "metric")).toMatchObject({ ml: 1_000 });
    expect(parseVolume("10 x 10 x 10", "imperial")).toMatchObject({ ml: 16_387 });
  });

  it.each(["25", "a lot", "12 x 12", "12 in", "0 l", "-3 l", "3 kg", ""])("does not read %j", (text) => {
    expect(parseVolume(text, "metric").kind).toBe("unreadable");
  });

  it("is shown in cubic feet or litres", () => {
    expect(formatVolume(53_802, "imperial")).toBe("1.9 cu ft");
    expect(formatVolume(53_802, "metric")).toBe("53.8 l");
    expect(formatVolume(1_250_000, "metric")).toBe("1,250 l");
  });
});
