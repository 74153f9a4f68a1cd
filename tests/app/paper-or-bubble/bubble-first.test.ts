import { describe, expect, it } from "vitest";
import { bubbleFirst } from "#app/paper-or-bubble/bubble-first.ts";
import { SUPPLIES, supplyOfKind } from "./small-answer";

describe("supplies with bubble first", () => {
  it("keep their order else", () => {
    const [sheets, bubble, tape, carton] = SUPPLIES;
    const large = supplyOfKind("large", "bubble");
    expect(bubbleFirst([...SUPPLIES, large])).toEqual([bubble, large, sheets, tape, carton]);
    expect(bubbleFirst([])).toEqual([]);
  });
});
