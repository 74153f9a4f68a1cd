import { describe, expect, it } from "vitest";
import { FRACTION_SIGNS, numberFromText } from "#lib/units/number-text";

describe("numberFromText", () => {
  it("reads a mixed number exactly", () => {
    expect(numberFromText("1 1/3", "imperial")).toEqual({ numerator: 4n, denominator: 3n });
  });

  it("reads a decimal with all its digits", () => {
    expect(numberFromText("15.999", "imperial")).toEqual({ numerator: 15999n, denominator: 1000n });
  });

  it("reads a number with point and comma by the last of them", () => {
    expect(numberFromText("1.234,5", "metric")).toEqual({ numerator: 12345n, denominator: 10n });
  });

  it("reads every fraction sign as the fraction it shows", () => {
    const shown = FRACTION_SIGNS.map(([sign]) => sign.normalize("NFKC").split("⁄").map(BigInt));
    const read = FRACTION_SIGNS.map(([sign]) => numberFromText(sign, "metric"));
    expect(read.map((ratio) => [ratio?.numerator, ratio?.denominator])).toEqual(shown);
  });

  it.each(["", ".", "1,2,3", "1..2", "½½", "1/0", "--1", "1e5", "123456789012345678901234567890"])(
    "does not read %j",
    (text) => {
      expect(numberFromText(text, "imperial")).toBeNull();
    },
  );
});
