import { describe, expect, it } from "vitest";
import { purchaseStatus } from "#lib/purchasing/purchase-status";

const open = { cameIn: false, closedAs: null };
const here = { cameIn: true, closedAs: "received" };
const off = { cameIn: false, closedAs: "cancelled" };

describe("status of an order", () => {
  it.each([
    ["draft", [open], "draft"],
    ["placed", [open, open], "placed"],
    ["placed", [open, off], "placed"],
    ["placed", [open, here], "partly received"],
    ["placed", [here, here], "received"],
    ["placed", [here, off], "received"],
    ["placed", [off, off], "cancelled"],
    ["placed", [], "cancelled"],
  ] as const)("of %s with %j is %s", (state, lines, status) => {
    expect(purchaseStatus(state, lines)).toBe(status);
  });
});
