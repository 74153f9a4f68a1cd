import { describe, expect, it } from "vitest";
import { readText, writtenText } from "#prisma/records/forecast-text";

describe("a forecast as text", () => {
  it("keeps nine digits of each number, and everything else as it is", () => {
    const part = { perWeek: [0.1 + 0.2, 12_345.678_912_3], none: null, words: "3.14159265358979", yes: true };
    expect(readText(writtenText(part))).toEqual({ ...part, perWeek: [0.3, 12_345.6789] });
  });

  it("reads what it wrote: written twice it is the same text", () => {
    const text = writtenText({ perWeek: [1 / 3, 2e-7, 0] });
    expect(writtenText(readText(text))).toBe(text);
  });
});
