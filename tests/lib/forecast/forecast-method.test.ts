import { describe, expect, it } from "vitest";
import { methodForecast } from "#lib/forecast/forecast-method";

describe("forecast method", () => {
  it("simple takes the plain mean", () => {
    expect(methodForecast({ kind: "simple", window: 2 }, [90, 10, 20])).toBe(15);
  });

  it("weighted leans to the newest week", () => {
    expect(methodForecast({ kind: "weighted", window: 2 }, [90, 10, 25])).toBe(20);
  });
});
