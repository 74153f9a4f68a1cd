import { describe, expect, it } from "vitest";
import { isFarOff, priceMove } from "#lib/purchasing/price-move";
import { day } from "#lib/units/day";

const paid = (on: string, perUnit: number) => ({ on: day(on), supplierId: null, perUnit });

describe("price move", () => {
  it("holds the last price against the one paid on an earlier day, and the offer against the last", () => {
    const move = priceMove(
      [paid("2026-01-05", 100), paid("2026-03-02", 200), paid("2026-05-04", 210), paid("2026-05-04", 250)],
      300,
    );
    expect(move?.last.perUnit).toBe(250);
    expect(move?.before?.on).toBe("2026-03-02");
    expect(move?.ratioToBefore).toBe(1.25);
    expect(move?.ratioToOffer).toBe(1.2);
  });

  it("is told of the first price too, and is nothing where nothing was paid", () => {
    expect(priceMove([paid("2026-01-05", 100)], null)).toMatchObject({ before: null, ratioToOffer: null });
    expect(priceMove([], 100)).toBeNull();
  });

  it("has no ratio to a price of nothing", () => {
    expect(priceMove([paid("2026-01-05", 0), paid("2026-02-05", 9)], 9)?.ratioToBefore).toBeNull();
  });

  it("asks for prices oldest first", () => {
    expect(() => priceMove([paid("2026-03-05", 1), paid("2026-01-05", 1)], null)).toThrow(RangeError);
  });

  it("is far off only beyond twenty times, either way, and never from a price of nothing", () => {
    expect([isFarOff(2000, 100), isFarOff(2001, 100)]).toEqual([false, true]);
    expect([isFarOff(5, 100), isFarOff(4.99, 100)]).toEqual([false, true]);
    expect(isFarOff(5, 0)).toBe(false);
  });
});
