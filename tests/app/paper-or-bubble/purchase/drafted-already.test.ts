import { describe, expect, it } from "vitest";
import { draftedAlready } from "#app/paper-or-bubble/purchase/drafted-already.ts";

const order = (status: string, ...offerIds: readonly (string | null)[]) => ({
  status,
  lines: offerIds.map((offerId) => ({ offerId })),
});
const plan = [{ lines: [{ offerId: "roll" }] }, { lines: [{ offerId: "bundle" }] }];

describe("packs of a plan that stand in a draft already", () => {
  it("are warned of, as they would be bought twice", () => {
    expect(draftedAlready(plan, [order("draft", "tape", "roll")])).toMatch(/^One draft at Buying holds some/);
    expect(draftedAlready(plan, [order("draft", "roll"), order("draft", "bundle", "roll")])).toMatch(
      /^2 drafts at Buying hold some/,
    );
  });

  it("are none where other packs are drafted, or the order is placed and so counted", () => {
    expect(draftedAlready(plan, [order("draft", "tape", null), order("placed", "roll")])).toBeNull();
  });
});
