import { describe, expect, it } from "vitest";
import { readMarkAsOrdered } from "#app/this-week/mark-as-ordered-form.ts";

const head = {
  purchaseId: "0c1e6f0e-6c0e-4a52-9a83-0b9a3c7d2b11",
  supplierId: "marram",
  placedOn: "2026-11-25",
};

describe("mark as ordered form", () => {
  it("takes the lines that have packs and leaves out those at none", () => {
    const typed = {
      ...head,
      "packs:a": "2",
      "expected:a": "2026-12-04",
      "packs:b": "0",
      "expected:b": "2026-12-04",
    };
    expect(readMarkAsOrdered(typed)).toEqual({
      kind: "order",
      order: { ...head, chosen: [{ offerId: "a", packs: 2, expectedOn: "2026-12-04" }] },
    });
  });

  it("refuses packs that are no whole number and says which", () => {
    expect(readMarkAsOrdered({ ...head, "packs:a": "1½", "expected:a": "2026-12-04" })).toEqual({
      kind: "unreadable-packs",
      offerId: "a",
      typed: "1½",
    });
  });

  it("says so when nothing was chosen", () => {
    expect(readMarkAsOrdered({ ...head, "packs:a": "0" })).toEqual({ kind: "nothing-chosen" });
  });

  it("throws on a head that this screen did not make", () => {
    expect(() => readMarkAsOrdered({ "packs:a": "1", "expected:a": "2026-12-04" })).toThrow();
  });
});
