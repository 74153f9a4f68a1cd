import { describe, expect, it } from "vitest";
import { neighbourSteps } from "#lib/postage/neighbour-steps";
import type { ParcelQuestion } from "#lib/postage/rated-parcel";
import { stepWords } from "#lib/postage/step-words";
import { exact, plainBand, plainCard, sized, stepUpTo, weighed } from "./rate-card-fixture";

const card = plainCard();
const question: ParcelQuestion = {
  card,
  zone: "home",
  weight: weighed("1.062 kg"),
  size: null,
  shipDay: card.validFrom,
};
const told = (change: Partial<ParcelQuestion>) => {
  const { cheaper, next } = neighbourSteps({ ...question, ...change });
  return {
    cheaper: cheaper === null ? null : [stepWords(cheaper.step), cheaper.savedMinor, Math.round(cheaper.mg)],
    next: next === null ? null : [next.minor, Math.floor(next.mg)],
  };
};

describe("the steps beside", () => {
  it("say how much lighter, what it saves, and how much room is left", () => {
    expect(told({})).toEqual({ cheaper: ["up to 1 kg", 250, 62_000], next: [1100, 938_000] });
  });

  it("have none below the lightest, and nothing carried above the heaviest", () => {
    expect(told({ weight: weighed("600 g") })).toEqual({ cheaper: null, next: [650, 400_000] });
    expect(told({ weight: weighed("4.9 kg") })).toEqual({
      cheaper: ["up to 2 kg", 450, 2_900_000],
      next: [null, 100_000],
    });
    expect(told({ weight: weighed("9 kg") })).toEqual({ cheaper: null, next: null });
  });

  it("leave out steps that cost the same", () => {
    const same = plainCard({
      bands: [
        plainBand([stepUpTo("1", "kg", [400]), stepUpTo("2", "kg", [650]), stepUpTo("3", "kg", [650])]),
      ],
    });
    expect(told({ card: same, weight: weighed("2.5 kg") }).cheaper).toEqual(["up to 1 kg", 250, 1_500_000]);
  });

  it("have none below where the size decides", () => {
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
    expect(told({ card: { ...card, dimensional }, size: sized("30 x 20 x 15 cm") }).cheaper).toBeNull();
  });
});
