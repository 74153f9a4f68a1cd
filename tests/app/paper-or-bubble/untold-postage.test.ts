import { describe, expect, it } from "vitest";
import { untoldPostage } from "#app/paper-or-bubble/untold-postage.ts";
import { comparison } from "#lib/cushioning/comparison";
import { plainCost } from "../../lib/cushioning/small-ways";

describe("the way whose postage alone is not known", () => {
  const known = (style: "paper" | "bubble", total: number) =>
    plainCost(style, total, {}, { postageMinor: 100 });

  it("is named, be it the cheaper one or the dearer one", () => {
    expect(untoldPostage(comparison(plainCost("paper", 200), known("bubble", 300)))).toBe("paper");
    expect(untoldPostage(comparison(known("bubble", 300), plainCost("paper", 400)))).toBe("paper");
  });

  it("is none where both are known, or neither", () => {
    expect(untoldPostage(comparison(known("bubble", 300), known("paper", 400)))).toBeNull();
    expect(untoldPostage(comparison(plainCost("bubble", 300), plainCost("paper", 400)))).toBeNull();
  });
});
