import fc from "fast-check";
import type { SourcedCard } from "#lib/postage/card-rows/card-row";
import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import type { RateBand, RateCard } from "#lib/postage/rate-card";
import type { FeeCondition, FeeGroup, RateFee } from "#lib/postage/rate-fee";
import type { Rounding } from "#lib/postage/ratio-rounding";
import type { LengthUnit, MassUnit, TypedMass } from "#lib/postage/typed-measure";
import { type Day, day } from "#lib/units/day";
import { type MinorUnits, minorUnits } from "#lib/units/money";
import { exact, typed } from "../rate-card-fixture";

// Random cards without faults, as a carrier might print them: everything that a card can say.

const MASS_UNITS = fc.constantFrom<MassUnit>("oz", "lb", "g", "kg");
const LENGTH_UNITS = fc.constantFrom<LengthUnit>("in", "cm", "mm");
const NUMBERS = fc.constantFrom("1", "2.50", "4 1/2", "15.999", "30", "0.785", "139", "1,728", "7/8");
const lengths = fc.tuple(NUMBERS, LENGTH_UNITS).map(([text, unit]) => typed(text, unit));
const masses = fc.tuple(NUMBERS, MASS_UNITS).map(([text, unit]) => typed(text, unit));
const orNull = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null });
const names = fc
  .stringMatching(/^[A-Za-zäß0-9 ,;"'³x-]{1,20}$/)
  .map((name) => name.trim())
  .filter((name) => name !== "");
const minor: fc.Arbitrary<MinorUnits> = fc.nat(99_999_999).map(minorUnits);
const days: fc.Arbitrary<Day> = fc.constantFrom("2026-01-01", "2026-07-12", "2026-10-04").map(day);
const later: fc.Arbitrary<Day> = fc.constantFrom("2026-12-31", "2027-01-17").map(day);
const roundings: fc.Arbitrary<Rounding> = fc.oneof(
  fc.constant({ kind: "none" } as const),
  fc.record({ kind: fc.constantFrom("up", "nearest", "down"), to: NUMBERS.map(exact) }),
);

/** Steps that rise, in ounces first and then in pounds. */
function risingMasses(most: number): fc.Arbitrary<TypedMass[]> {
  const texts = ["4", "8", "12", "15.999"].map((text) => typed(text, "oz"));
  const pounds = Array.from({ length: 8 }, (_, at) => typed(String(at + 1), "lb"));
  return fc.subarray([...texts, ...pounds], { minLength: 1, maxLength: most });
}

const prices = (zones: readonly string[]) =>
  fc.array(orNull(minor), { minLength: zones.length, maxLength: zones.length });

function bandsOf(zones: readonly string[], name: string): fc.Arbitrary<RateBand> {
  return fc.record({
    name: fc.constant(name),
    walls: fc.record({
      longest: orNull(lengths),
      lengthAndGirth: orNull(lengths),
      sides: orNull(fc.tuple(lengths, lengths, lengths)),
      weight: orNull(masses),
    }),
    countsSize: fc.boolean(),
    steps: risingMasses(6).chain((limits) =>
      fc
        .array(prices(zones), { minLength: limits.length, maxLength: limits.length })
        .map((rows) => limits.map((upTo, at) => ({ upTo, prices: rows[at] ?? [] }))),
    ),
    beyond: fc.oneof(
      fc.constant({ kind: "notCarried" } as const),
      fc.record({ kind: fc.constant("perFurther" as const), each: masses, prices: prices(zones) }),
    ),
  });
}

function someZones(zones: readonly string[]): fc.Arbitrary<readonly string[] | null> {
  if (zones.length < 2) return fc.constant(null);
  return orNull(fc.subarray([...zones], { minLength: 1, maxLength: zones.length - 1 }));
}

function sizeRules(zones: readonly string[]): fc.Arbitrary<DimensionalRule> {
  return fc.record({
    divisor: NUMBERS.map(exact),
    lengthUnit: LENGTH_UNITS,
    massUnit: MASS_UNITS,
    floor: orNull(NUMBERS.map(exact)),
    sides: roundings,
    result: roundings,
    shapeFactor: orNull(NUMBERS.map(exact)),
    atMost: orNull(NUMBERS.map(exact)),
    zones: someZones(zones),
  });
}

const conditions: fc.Arbitrary<FeeCondition> = fc.oneof(
  fc.constant({ kind: "always" } as const),
  fc.record({ kind: fc.constant("volume" as const), over: NUMBERS.map(exact), unit: LENGTH_UNITS }),
  fc.record({
    kind: fc.constant("side" as const),
    which: fc.constantFrom("longest" as const, "second" as const),
    over: fc.constant(typed("22", "in")),
    upTo: orNull(fc.constantFrom(typed("30", "in"), typed("76.5", "cm"))),
  }),
);

/** Amounts that rise from group to group, so that no two groups are one. */
function groupsOf(zones: readonly string[]): fc.Arbitrary<FeeGroup[]> {
  const rows = (from: number) =>
    fc
      .tuple(risingMasses(3), fc.boolean(), fc.nat(500))
      .map(([limits, isOpen, more]) => [
        ...limits.map((upTo, at) => ({ upTo, minor: minorUnits(from + at) })),
        ...(isOpen ? [{ upTo: null, minor: minorUnits(from + 100 + more) }] : []),
      ]);
  return fc.tuple(someZones(zones), rows(10), rows(10_000)).map(([some, first, second]) => {
    if (some === null) return [{ zones: null, rows: first }];
    const others = zones.filter((zone) => !some.includes(zone));
    return [
      { zones: some, rows: first },
      { zones: others, rows: second },
    ];
  });
}

const feesOf = (zones: readonly string[]): fc.Arbitrary<RateFee> =>
  fc.record({
    name: names,
    validFrom: orNull(days),
    validTo: orNull(later),
    when: conditions,
    groups: groupsOf(zones),
  });

/** A card that has no fault. */
export const soundCards: fc.Arbitrary<SourcedCard> = fc
  .uniqueArray(names, { minLength: 1, maxLength: 4, selector: (name) => name.toLowerCase() })
  .chain((zones) =>
    fc.record({
      card: fc
        .record({
          service: names,
          currency: fc.constant("USD"),
          validFrom: days,
          validTo: orNull(later),
          zones: fc.constant(zones as readonly string[]),
          bands: fc
            .uniqueArray(names, { minLength: 1, maxLength: 3 })
            .chain((bandNames) =>
              fc.tuple(...bandNames.map((name) => bandsOf(zones, bandNames.length === 1 ? "" : name))),
            ),
          roundUpTo: orNull(masses),
          dimensional: orNull(sizeRules(zones)),
          fees: fc.array(feesOf(zones), { maxLength: 3 }),
        })
        .map((card): RateCard => card),
      source: orNull(names),
      readOn: orNull(days),
    }),
  );
