import { describe, expect, it } from "vitest";
import { planAim } from "#app/purchase-plan/plan-aim.ts";

describe("what the plan is asked for", () => {
  it.each([
    [{}, { kind: "cheapest" }],
    [{ aim: "anything" }, { kind: "cheapest" }],
    [{ aim: "urgent" }, { kind: "urgent" }],
    [{ aim: "least-room" }, { kind: "least-room", extraShare: 0.05 }],
    [
      { aim: "within", sum: "59.50" },
      { kind: "within", minor: 5950 },
    ],
    [
      { aim: "within", sum: "0" },
      { kind: "within", minor: 0 },
    ],
  ])("reads %j", (address, aim) => {
    expect(planAim(address, 2)).toEqual({ aim, unreadable: null });
  });

  it.each(["", "sixty", "-5", "1.234.5"])("says that “%s” can't be read as a sum", (sum) => {
    expect(planAim({ aim: "within", sum }, 2)).toEqual({ aim: { kind: "cheapest" }, unreadable: sum });
  });
});
