import { describe, expect, it } from "vitest";
import { type LeftOutReason, mostTelling } from "#lib/cartons/choice/left-out";

const named = (cartonId: string, reason: LeftOutReason) => ({ cartonId, reason });
const tooSmall: LeftOutReason = { kind: "doesNotFit", reason: { kind: "no-room" } };

describe("cartons worth naming", () => {
  it("are at most four: what fits and may not carry it first, what it does not fit last, else as given", () => {
    const told = mostTelling([
      named("small", tooSmall),
      named("open", { kind: "notProven", tried: { passes: 1, hasCutPlan: false, states: 1 } }),
      named("weak", { kind: "innerOnly", reason: "unrated" }),
      named("gone", { kind: "notOnHand", savesValue: 1 }),
      named("weaker", { kind: "innerOnly", reason: "grade" }),
    ]);
    expect(told.map(({ cartonId }) => cartonId)).toEqual(["weak", "weaker", "gone", "open"]);
  });
});
