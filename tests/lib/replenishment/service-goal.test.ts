import { describe, expect, it } from "vitest";
import { cyclesPerShortage } from "#lib/replenishment/service-goal";

describe("a goal in order cycles", () => {
  it.each([
    [0.9, 10],
    [0.95, 20],
    [0.98, 50],
    [0.5, 2],
  ])("%d is one shortage in %d", (level, cycles) => {
    expect(cyclesPerShortage(level)).toBe(cycles);
  });
});
