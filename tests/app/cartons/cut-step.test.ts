import { describe, expect, it } from "vitest";
import { cutStep } from "../../../app/cartons/cut-step";

describe("the steps a carton is cut in", () => {
  it("stand on the ruler of the shop: quarters of an inch, or half centimetres", () => {
    expect((cutStep("imperial") * 4) / 25_400).toBe(1);
    expect(cutStep("metric") / 10_000).toBe(0.5);
  });
});
