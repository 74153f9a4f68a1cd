import { describe, expect, it } from "vitest";
import { cardError } from "#lib/postage/rate-card-fault";

describe("an error of a card", () => {
  it("must be mended", () => {
    expect(cardError("Zone 1 has no name.")).toEqual({ severity: "error", message: "Zone 1 has no name." });
  });
});
