import { describe, expect, it } from "vitest";
import { scaledState } from "#lib/forecast/methods/scaled-state";

describe("a state in another unit", () => {
  it("has its added seasons scaled and its factors kept", () => {
    const state = { level: 4, trend: -1, seasons: [0.5, 1.5] };
    expect(scaledState(state, 2, "additive")).toEqual({ level: 8, trend: -2, seasons: [1, 3] });
    expect(scaledState(state, 2, "multiplicative")).toEqual({ level: 8, trend: -2, seasons: [0.5, 1.5] });
  });
});
