import { describe, expect, it } from "vitest";
import { typedValues } from "#app/_parts/form-state.ts";

describe("typed values", () => {
  it("are trimmed, and empty ones are left out", () => {
    const form = new FormData();
    form.append("name", " Tissue ");
    form.append("note", "  ");
    expect(typedValues(form)).toEqual({ name: "Tissue" });
  });

  it("of a name that was sent several times stand one a line", () => {
    const form = new FormData();
    form.append("itemTypeIds", "mug");
    form.append("itemTypeIds", "vase");
    form.append("toString", "kept as it is");
    expect(typedValues(form)).toEqual({ itemTypeIds: "mug\nvase", toString: "kept as it is" });
  });
});
