import { describe, expect, it } from "vitest";
import type { RateCard } from "#lib/postage/rate-card";
import { ratedParcel } from "#lib/postage/rated-parcel";
import { ratioNumber } from "#lib/postage/ratio";
import { sizeSaving } from "#lib/postage/size-saving";
import { minorUnits } from "#lib/units/money";
import { exact, plainBand, plainCard, sized, stepUpTo, typed, weighed } from "./rate-card-fixture";

const dimensional = {
  divisor: exact("5000"),
  lengthUnit: "cm",
  massUnit: "kg",
  floor: exact("6000"),
  sides: { kind: "none" },
  result: { kind: "none" },
  shapeFactor: null,
  atMost: null,
  zones: null,
} as const;

function saving(card: RateCard, sizes: string, weight = "1 kg") {
  const question = {
    card,
    zone: "home",
    weight: weighed(weight),
    size: sized(sizes),
    shipDay: card.validFrom,
  };
  const rating = ratedParcel(question);
  if (rating.kind !== "priced") throw new RangeError(`saving requires a price, got ${rating.kind}`);
  const found = sizeSaving(question, rating);
  return found === null
    ? null
    : [
        found.minor,
        found.savedMinor,
        found.mostVolume === null ? null : Math.round(ratioNumber(found.mostVolume)),
      ];
}

describe("what a smaller size would save", () => {
  it("is the price by weight alone, up to the volume that weighs no more", () => {
    // 30 × 20 × 15 = 9,000 cm³ is 1.8 kg; 1 kg by size, the step, takes 5,000 cm³, and the floor lets 6,000 pass.
    expect(saving(plainCard({ dimensional }), "30 x 20 x 15 cm")).toEqual([400, 250, 6000]);
    expect(saving(plainCard({ dimensional: { ...dimensional, floor: null } }), "30 x 20 x 15 cm")).toEqual([
      400, 250, 5000,
    ]);
  });

  it("reaches as far as the step does, not only its weight, and minds how the weight by size is rounded", () => {
    const steps = [stepUpTo("1.5", "kg", [400]), stepUpTo("5", "kg", [650])];
    const open = plainCard({ bands: [plainBand(steps)], dimensional: { ...dimensional, floor: null } });
    expect(saving(open, "30 x 20 x 15 cm", "400 g")).toEqual([400, 250, 7500]);
    const whole = { ...dimensional, floor: null, result: { kind: "up", to: exact("1") } as const };
    expect(saving({ ...open, dimensional: whole }, "30 x 20 x 15 cm", "400 g")).toEqual([400, 250, 5000]);
    // At that volume it costs so much, and past it more.
    const at = (sizes: string) => saving({ ...open, dimensional: whole }, sizes, "400 g");
    expect([at("25 x 20 x 10 cm"), at("25.1 x 20 x 10 cm")?.[1]]).toEqual([null, 250]);
  });

  it("is nothing where size costs nothing", () => {
    expect(saving(plainCard(), "30 x 20 x 15 cm")).toBeNull();
    expect(saving(plainCard({ dimensional }), "20 x 15 x 20 cm")).toBeNull();
    expect(saving(plainCard({ dimensional }), "30 x 20 x 15 cm", "1.9 kg")).toBeNull();
  });

  it("counts fees for size", () => {
    const fees = [
      {
        name: "long",
        validFrom: null,
        validTo: null,
        when: { kind: "side", which: "longest", over: typed("25", "cm"), upTo: null } as const,
        groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(300) }] }],
      },
    ];
    expect(saving(plainCard({ fees }), "30 x 5 x 5 cm")).toEqual([400, 300, null]);
  });
});
