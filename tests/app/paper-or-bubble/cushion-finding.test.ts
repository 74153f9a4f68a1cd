import { describe, expect, it } from "vitest";
import { cushionFinding } from "#app/paper-or-bubble/cushion-finding.ts";
import { plainCost } from "../../lib/cushioning/small-ways";
import { DOLLARS } from "../cartons/small-shelf";
import { answerOf, kindOf } from "./small-answer";

type Priced = Parameters<typeof plainCost>;
const kind = (parcels: number, ...costs: readonly Priced[]) =>
  kindOf(
    `type ${parcels}`,
    parcels,
    costs.map((cost) => plainCost(...cost)),
  );
const found = (...kinds: ReturnType<typeof kind>[]) => cushionFinding(answerOf(kinds), DOLLARS);

describe("what the screen found", () => {
  it("is that one style wins throughout, and by how much", () => {
    // 10 x 100 and 5 x 50 are 12.50
    expect(found(kind(10, ["paper", 900], ["bubble", 800]), kind(5, ["paper", 600], ["bubble", 550]))).toBe(
      "Bubble for all that you send: $12.50 cheaper than all on paper.",
    );
  });

  it("is the rule, and how many kinds are cheaper in another style", () => {
    const [mugs, tiles] = [
      kind(10, ["paper", 800], ["bubble", 900]),
      kind(5, ["paper", 700], ["bubble", 550]),
    ];
    // All on paper 115.00, all on bubble 117.50; each in its own way 107.50
    expect(found(mugs, tiles)).toBe(
      "Paper as a rule, but one kind of parcel is cheaper on bubble, which saves $7.50.",
    );
    expect(found(mugs, tiles, kind(1, ["paper", 700], ["bubble", 550]))).toBe(
      "Paper as a rule, but 2 of 3 kinds of parcel are cheaper on bubble, which saves $9.00.",
    );
  });

  it("names no one style where the others are cheaper in several", () => {
    const [mugs, tiles, vases] = [
      kind(10, ["paper", 800], ["bubble", 900], ["mixed", 850]),
      kind(1, ["paper", 700], ["bubble", 550], ["mixed", 800]),
      kind(2, ["paper", 700], ["bubble", 900], ["mixed", 600]),
    ];
    expect(found(mugs, tiles, vases)).toBe(
      "Paper as a rule, but 2 of 3 kinds of parcel are cheaper another way, which saves $3.50.",
    );
    expect(found(mugs, vases)).toBe(
      "Paper as a rule, but one kind of parcel is cheaper mixed, which saves $2.00.",
    );
  });

  it("counts no kind as cheaper in another style that costs the same in both", () => {
    const alike = kind(10, ["paper", 800], ["bubble", 800]);
    expect(found(alike, kind(5, ["paper", 600], ["bubble", 550]))).toBe(
      "Bubble for all that you send: $2.50 cheaper than all on paper.",
    );
    expect(found(alike)).toBe("All on paper and all on bubble cost the same.");
  });

  it("does not say all where a kind has no card in the style that wins", () => {
    const mixed = kind(2, ["paper", 700], ["mixed", 750]);
    expect(found(kind(10, ["paper", 900], ["bubble", 800]), mixed)).toMatch(
      /^Bubble wherever you have a card for it: /,
    );
  });

  it("is no finding where postage is known on one side alone", () => {
    const unweighed = kind(
      3,
      ["paper", 200],
      ["bubble", 900, {}, { materialsMinor: 200, postageMinor: 700 }],
    );
    expect(cushionFinding(answerOf([], { untold: [unweighed] }), DOLLARS)).toBe(
      "Not to be told yet: of each kind of parcel the postage is known on one side alone.",
    );
  });

  it("is that there is nothing to compare", () => {
    expect(found()).toMatch(/^Nothing to compare yet/);
  });
});
