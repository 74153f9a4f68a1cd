import { describe, expect, it } from "vitest";
import { readRateTable } from "#lib/postage/rate-table";
import { rateTableText } from "#lib/postage/rate-table-text";
import { minorUnits } from "#lib/units/money";
import { plainBand, stepUpTo, typed } from "./rate-card-fixture";

describe("a rate table as text", () => {
  it("is read back as the same steps, with what holds beyond them", () => {
    const [first, second] = [stepUpTo("15.999", "oz", [460, 520]), stepUpTo("1", "lb", [610, 740])];
    const steps = [first, { ...second, prices: [minorUnits(610), null] }];
    const beyond = { kind: "perFurther" as const, each: typed("1", "lb"), prices: [85, 120].map(minorUnits) };
    const text = rateTableText(plainBand(steps, { beyond }), ["Near", "Far"], 2);
    expect(text.split("\n")[3]).toBe("each further 1 lb\t0.85\t1.20");
    const table = readRateTable(text, { measures: "imperial", minorDigits: 2, blanks: "refused" });
    expect(table).toEqual({ kind: "table", zones: ["Near", "Far"], steps, beyond });
  });

  it("must have the row of further units last", () => {
    const text = "up to\tNear\neach further 1 lb\t0.85\n1 lb\t6.10";
    expect(readRateTable(text, { measures: "imperial", minorDigits: 2, blanks: "refused" })).toEqual({
      kind: "unreadable",
      problems: ["Row 3: it stands under the row of further units. Put that one last."],
    });
  });
});
