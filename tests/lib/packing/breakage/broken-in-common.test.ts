import { describe, expect, it } from "vitest";
import { brokenInCommon, type TraitCount } from "#lib/packing/breakage/broken-in-common";

const style = (value: string, parcels: number, broken: number): TraitCount => ({
  trait: "style",
  value,
  parcels,
  broken,
});

describe("what broken parcels had in common", () => {
  it("sets a style that breaks far more often apart from luck", () => {
    // Fisher's test of 6 in 20 against 1 in 200, times the two styles looked at.
    const [bubble, paper] = brokenInCommon([style("paper", 200, 1), style("bubble", 20, 6)], {
      parcels: 220,
      broken: 7,
    });
    expect(bubble).toMatchObject({
      value: "bubble",
      others: { parcels: 200, broken: 1 },
      verdict: "stands-out",
    });
    expect(bubble?.byLuck).toBeLessThan(1e-4);
    expect(bubble?.low).toBeGreaterThan(0.1);
    expect(paper?.verdict).toBe("may-be-luck");
    expect(paper?.byLuck).toBe(1);
  });

  it("takes a few broken parcels for what they are", () => {
    const [first] = brokenInCommon([style("bubble", 10, 2), style("paper", 400, 0)], {
      parcels: 410,
      broken: 2,
    });
    expect(first?.verdict).toBe("too-few");
  });

  it("asks more of a trait the more traits are looked at", () => {
    const all = { parcels: 100, broken: 5 };
    const one = brokenInCommon([style("bubble", 30, 4)], all);
    const cartons = Array.from(
      { length: 20 },
      (_, at): TraitCount => ({
        trait: "carton",
        value: `carton ${at}`,
        parcels: 5,
        broken: 0,
      }),
    );
    const many = brokenInCommon([style("bubble", 30, 4), ...cartons], all);
    expect(many[0]?.byLuck).toBeCloseTo((one[0]?.byLuck ?? 0) * 21, 12);
  });

  it("says nothing where all parcels have the trait, and of traits without a broken parcel", () => {
    const all = { parcels: 50, broken: 4 };
    expect(brokenInCommon([style("paper", 50, 4)], all)).toEqual([]);
    expect(brokenInCommon([style("paper", 30, 0)], all)).toEqual([]);
    expect(brokenInCommon([], { parcels: 0, broken: 0 })).toEqual([]);
  });

  it("seldom calls luck more than luck", () => {
    // Four broken of 200, thrown over two styles and ten cartons by a fixed sequence: none stands out more than 1 in 20.
    let seed = 1;
    const dice = () => {
      seed = (seed * 48271) % 2147483647;
      return seed / 2147483647;
    };
    let alarms = 0;
    for (let shop = 0; shop < 300; shop += 1) {
      const cells = new Map<string, TraitCount>();
      let broken = 0;
      for (let parcel = 0; parcel < 200; parcel += 1) {
        const isBroken = dice() < 0.02;
        broken += Number(isBroken);
        for (const value of [`style ${Math.floor(dice() * 2)}`, `carton ${Math.floor(dice() * 10)}`]) {
          const cell = cells.get(value) ?? style(value, 0, 0);
          cells.set(value, {
            ...cell,
            parcels: cell.parcels + 1,
            broken: cell.broken + Number(isBroken),
          });
        }
      }
      const found = brokenInCommon([...cells.values()], { parcels: 200, broken });
      alarms += Number(found.some(({ verdict }) => verdict === "stands-out"));
    }
    expect(alarms / 300).toBeLessThanOrEqual(0.05);
  });
});
