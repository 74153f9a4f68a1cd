import { describe, expect, it } from "vitest";
import { countsSize } from "#lib/postage/counts-size";
import { NO_WALLS } from "#lib/postage/size-walls";
import { exact, plainBand, plainCard, stepUpTo, typed } from "./rate-card-fixture";

const steps = [stepUpTo("1", "kg", [400])];
const dimensional = {
  divisor: exact("5000"),
  lengthUnit: "cm",
  massUnit: "kg",
  floor: null,
  sides: { kind: "none" },
  result: { kind: "none" },
  shapeFactor: null,
  atMost: null,
  zones: null,
} as const;
const fee = { name: "fee", validFrom: null, validTo: null, groups: [] };

describe("whether prices hang on size", () => {
  it("is so with a rule, a limit or a fee for it", () => {
    expect(countsSize(plainCard({ dimensional }))).toBe(true);
    expect(
      countsSize(
        plainCard({ bands: [plainBand(steps, { walls: { ...NO_WALLS, longest: typed("60", "cm") } })] }),
      ),
    ).toBe(true);
    expect(
      countsSize(plainCard({ fees: [{ ...fee, when: { kind: "volume", over: exact("1"), unit: "in" } }] })),
    ).toBe(true);
  });

  it("is not so without, with a limit of weight alone, or with a rule that no band counts", () => {
    expect(countsSize(plainCard())).toBe(false);
    expect(
      countsSize(
        plainCard({ bands: [plainBand(steps, { walls: { ...NO_WALLS, weight: typed("2", "kg") } })] }),
      ),
    ).toBe(false);
    expect(countsSize(plainCard({ dimensional, bands: [plainBand(steps, { countsSize: false })] }))).toBe(
      false,
    );
    expect(countsSize(plainCard({ fees: [{ ...fee, when: { kind: "always" } }] }))).toBe(false);
  });
});
