import { describe, expect, it } from "vitest";
import { combined } from "#lib/forecast/combined";
import { meanMethod } from "#lib/forecast/methods/mean-method";
import { naive, seasonalNaive } from "#lib/forecast/methods/naive";

const series = { values: [1, 5, 3, 9, 2, 10], seasonLength: 2 };
// Newest 10; mean 30 / 6 = 5; a season ago 2, then 10.
const members = [naive.fitted(series), meanMethod.fitted(series), seasonalNaive.fitted(series)];

describe("a combination of forecasts", () => {
  it("is the mean of its members at each step", () => {
    expect(combined(members, "mean").forecast(2)).toEqual([17 / 3, 25 / 3]);
  });

  it("or their median, which one member gone astray cannot move", () => {
    expect(combined(members, "median").forecast(2)).toEqual([5, 10]);
    const astray = { forecast: () => [1e9, -1e9], forecastAfter: () => [1e9, -1e9] };
    expect(combined([...members.slice(0, 2), astray], "median").forecast(2)).toEqual([10, 5]);
  });

  it("looks back with what its members would have said then", () => {
    // After four values: newest 9; mean 18 / 4 = 4.5; a season ago 3.
    expect(combined(members, "mean").forecastAfter(4, 1)).toEqual([5.5]);
    expect(combined(members, "median").forecastAfter(4, 1)).toEqual([4.5]);
  });

  it("needs a member", () => {
    expect(() => combined([], "mean")).toThrow(RangeError);
  });
});
