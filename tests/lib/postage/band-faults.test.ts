import { describe, expect, it } from "vitest";
import { bandFaults } from "#lib/postage/band-faults";
import type { RateBand } from "#lib/postage/rate-card";
import { NO_WALLS } from "#lib/postage/size-walls";
import { minorUnits } from "#lib/units/money";
import { plainBand, stepUpTo, typed } from "./rate-card-fixture";

const steps = [
  stepUpTo("15.999", "oz", [400, 500]),
  stepUpTo("1", "lb", [400, 520]),
  stepUpTo("1", "kg", [600, 900]),
];
const told = (change: Partial<RateBand>) =>
  bandFaults({ zones: ["near", "far"] }, plainBand(steps, change), 0).map(
    ({ severity, message }) => `${severity} ${message}`,
  );

describe("faults of a band", () => {
  it("are none in a sound one, whose steps may mix units", () => {
    expect(told({})).toEqual([]);
  });

  it("name steps that do not get heavier, whatever their units", () => {
    expect(told({ steps: [stepUpTo("16", "oz", [400, 500]), stepUpTo("1", "lb", [600, 900])] })).toEqual([
      "error up to 1 lb: it is not heavier than the step before, 16 oz. Mend it or sort the steps.",
    ]);
    expect(
      told({ name: "Small", steps: [stepUpTo("1", "kg", [1, 1]), stepUpTo("2", "lb", [1, 1])] }),
    ).toEqual([
      "error Small, up to 2 lb: it is not heavier than the step before, 1 kg. Mend it or sort the steps.",
    ]);
  });

  it("name a step of nothing, and a band without steps", () => {
    expect(told({ steps: [stepUpTo("0", "kg", [1, 1])] })).toEqual([
      "error up to 0 kg: a weight step must be above zero. Type the weight up to which it holds.",
    ]);
    expect(told({ steps: [] })).toEqual(["error The card has no weight step. Add at least one."]);
    expect(told({ name: "Small", steps: [] })).toEqual(["error Small has no weight step. Add at least one."]);
  });

  it("warn of a price that falls with weight, by row and zone", () => {
    expect(told({ steps: [stepUpTo("1", "kg", [400, 500]), stepUpTo("2", "kg", [450, 499])] })).toEqual([
      "warning up to 2 kg, zone far: it costs less than up to 1 kg. Look at both prices; if the list says so, leave them.",
    ]);
  });

  it("look at the prices of each step and of further units", () => {
    const beyond: RateBand["beyond"] = { kind: "perFurther", each: typed("0", "g"), prices: [minorUnits(1)] };
    expect(told({ beyond })).toEqual([
      "error each further 0 g: the further unit must be above zero. Type it, or say that it is not carried.",
      "error each further 0 g, zone far: the price is missing. Type it, or take the zone off this card.",
    ]);
    expect(told({ steps: [stepUpTo("1", "kg", [400])] })).toHaveLength(1);
  });

  it("name limits of nothing", () => {
    const zero = typed("0", "cm");
    const walls = {
      longest: zero,
      lengthAndGirth: zero,
      sides: [zero, typed("1", "cm"), typed("1", "cm")],
      weight: null,
    } as const;
    expect(told({ walls })).toEqual([
      "error most longest side: a limit must be above zero. Type it or leave it empty.",
      "error most length and girth: a limit must be above zero. Type it or leave it empty.",
      "error most sides: a limit must be above zero. Type it or leave it empty.",
    ]);
  });

  it("warn of steps that no weight reaches", () => {
    expect(told({ walls: { ...NO_WALLS, weight: typed("1", "lb") } })).toEqual([
      "warning up to 1 kg: no parcel reaches it by its weight, as at most 1 lb is taken. Look at both; a weight by size may still reach it.",
    ]);
    expect(told({ walls: { ...NO_WALLS, weight: typed("900", "g") } })).toEqual([]);
  });
});
