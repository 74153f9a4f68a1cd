import { describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { unchangedSteps } from "#prisma/records/unchanged-steps";
import { fillStep, mugCard } from "./counted-shop";

const spring = mugCard("spring", [fillStep("fill", 11), fillStep("wrap", 2, { words: "Wrap" })]);
const autumn = mugCard("autumn", [fillStep("fill-2", 13), fillStep("wrap-2", 2, { words: "Wrap" })], {
  effectiveFrom: day("2026-09-01"),
});
const idsOn = (on: string, versions = [spring, autumn]) =>
  Object.fromEntries([...unchangedSteps(versions, day(on))].map(([id, { step }]) => [id, step.id]));

describe("steps that go on unchanged", () => {
  it("are the step of the version that holds; a changed step goes on in none", () => {
    expect(idsOn("2026-09-01")).toEqual({ wrap: "wrap-2", "fill-2": "fill-2", "wrap-2": "wrap-2" });
    expect(idsOn("2026-08-31")).toEqual({ fill: "fill", wrap: "wrap", "wrap-2": "wrap" });
  });

  it("are told apart where a card has two of a kind", () => {
    const twice = (id: string, from: string) =>
      mugCard(id, [fillStep(`${id}-a`, 1), fillStep(`${id}-b`, 1)], { effectiveFrom: day(from) });
    expect(idsOn("2026-09-01", [twice("x", "2026-01-01"), twice("y", "2026-02-01")])).toEqual({
      "x-a": "y-a",
      "x-b": "y-b",
      "y-a": "y-a",
      "y-b": "y-b",
    });
  });
});
