import { describe, expect, it } from "vitest";
import { cardError, faultsOf, partOf } from "#lib/postage/rate-card-fault";

describe("an error of a card", () => {
  it("must be mended", () => {
    expect(cardError("Zone 1 has no name.")).toEqual({ severity: "error", message: "Zone 1 has no name." });
  });

  it("names the part of the card that it is about, the innermost", () => {
    const step = faultsOf(partOf("step", 0, 3), [cardError("heavy")]);
    expect(faultsOf(partOf("band", 0), [...step, cardError("wide")]).map(({ part }) => part)).toEqual([
      "step 0 3",
      "band 0",
    ]);
  });
});
