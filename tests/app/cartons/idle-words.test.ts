import { describe, expect, it } from "vitest";
import { couldWords, idleAdvice, keepWords, wayWords } from "#app/cartons/idle-words.ts";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { couldHaveGone, type IdleUse } from "#lib/cartons/idle/could-have-gone";
import type { KeepFigure } from "#lib/cartons/keeping/keep-figure";
import { USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
import { CENT, carton, IN } from "../../lib/cartons/choice/mug-bench";
import { pastMug } from "../../lib/cartons/idle/past-mugs";
import { DOLLARS } from "./small-shelf";

const NAMES = { typeOf: (id: string) => id.toUpperCase(), cartonOf: (id: string) => `Carton ${id}` };
const ASKED = { parcels: 9, days: 90 };

/** What an idle 10 in cube could have taken of some mugs: it costs 90 + 860/52 × 7 + tape + postage, 812 cents or so. */
const useOf = (paidCents: readonly number[], onHand: number | null): IdleUse =>
  couldHaveGone({
    carton: carton("cube-10", [10, 10, 10], 90, { onHand }),
    parcels: paidCents.map((cents, at) => pastMug(`${at}`, { materials: cents, postage: 600 })),
    trust: USUAL_TRUST,
    effort: QUICK_EFFORT,
  });
const saved = (change: Partial<IdleUse["all"]>, use = useOf([300, 300], 5)): IdleUse => ({
  ...use,
  all: { ...use.all, ...change },
});

describe("what could have gone in a carton, in words", () => {
  it("is that nothing could", () => {
    expect(couldWords(useOf([], 5), ASKED, NAMES, DOLLARS)).toEqual([
      "None of the 9 parcels of the last 90 days would have fitted with its cushion.",
    ]);
  });

  it("names how many, of which types, and what each would have cost in the mean, in both ways of counting", () => {
    const use = saved({ savesValue: -40 * CENT, savesAsSpentValue: 30 * CENT });
    const [first, second] = couldWords(use, ASKED, NAMES, DOLLARS);
    expect(first).toBe("2 of the 9 parcels of the last 90 days could have gone in it: MUG (2 of 2).");
    expect(second).toContain("$0.15 less if this carton's price counts as spent, $0.20 more if not");
  });

  it("names three types and says that there are others", () => {
    const use = useOf([300], 5);
    const [type] = use.itemTypes;
    if (type === undefined) throw new Error("the mug suits it");
    const many = { ...use, itemTypes: ["a", "b", "c", "d"].map((itemTypeId) => ({ ...type, itemTypeId })) };
    const [first] = couldWords(many, ASKED, NAMES, DOLLARS);
    expect(first).toMatch(/A \(1 of 1\), B \(1 of 1\), C \(1 of 1\) and others\.$/);
  });

  it("is worth it for as many as there are, of those that save", () => {
    const use = useOf([500, 400, 20], 1);
    const words = couldWords(use, ASKED, NAMES, DOLLARS);
    expect(use.withinStock?.parcels).toBe(1);
    expect(words[2]).toMatch(
      /^Worth it for MUG \(1\): \$\d\.\d\d saved on this one, its price taken as spent\.$/,
    );
  });

  it("is not worth it where nothing would have been saved, and not known before the first count", () => {
    expect(couldWords(useOf([20], 5), ASKED, NAMES, DOLLARS)[2]).toContain("it would have saved nothing");
    expect(couldWords(useOf([300], null), ASKED, NAMES, DOLLARS)[2]).toBe(
      "Count it to see how far it reaches.",
    );
  });
});

describe("how many to keep, in words", () => {
  const figure = (change: Partial<Extract<KeepFigure, { kind: "keep" | "letGo" }>>): KeepFigure => ({
    ...{ kind: "letGo", keep: 12, letGo: 30, keepYears: 4, reason: "moreThanPays" },
    ...change,
  });

  it.each([
    [figure({}), "pays to keep 12 and to let 30 go; room and a likely use decide as well"],
    [figure({ kind: "keep", letGo: 0, reason: "usedInTime" }), "pays to keep all 12"],
    [
      figure({ kind: "keep", letGo: 0, keepYears: null, reason: "costsNothing" }),
      "costs no money, only room",
    ],
    [figure({ keep: 0, letGo: 40, keepYears: null, reason: "notUsed" }), "none of the 40 is worth keeping"],
    [{ kind: "none", reason: "countFirst" }, "Count it first"],
    [{ kind: "none", reason: "nothingHeld" }, "None is there"],
    [{ kind: "none", reason: "watchedTooShort" }, "13 weeks"],
    [{ kind: "none", reason: "priceUnknown" }, "Without a price"],
  ] as const)("is said for %j", (told, words) => {
    expect(keepWords(told)).toContain(words);
  });
});

describe("a way out for a carton that sits, in words", () => {
  const way = (each: Parameters<typeof wayWords>[0]) => wayWords(each, NAMES, DOLLARS);

  it("is cutting it down, to which heights for what, with the blade away from the hand", () => {
    const heights = [
      { heightUm: 6 * IN, itemTypeIds: ["mug", "bowl"], parcels: 7 },
      { heightUm: 8 * IN, itemTypeIds: ["jug"], parcels: 2 },
    ];
    const words = way({ kind: "cutDown", heights });
    expect(words).toMatch(/^Cut it down: to 6 in inside for MUG, BOWL \(7 parcels\); to 8 in inside for JUG/);
    expect(words).toContain("blade away from you");
  });

  it("is an inner box, with the reason where it is not plain", () => {
    expect(way({ kind: "innerBox", reason: "notForSending", outerIds: ["12", "14"] })).toBe(
      "Use it as an inner box, in Carton 12 or Carton 14: it has no rating to send in.",
    );
    expect(way({ kind: "innerBox", reason: "damaged", outerIds: ["12"] })).toBe(
      "Use it as an inner box, in Carton 12.",
    );
  });

  it("is pads, giving away, or no more buying", () => {
    const pads = { kind: "pads", boardEachUm2: 1 } as const;
    expect(way({ ...pads, reason: "nothingFits", cartons: 4 })).toBe("Cut it into pads: 4 of them.");
    expect(way({ ...pads, reason: "damaged", cartons: null })).toBe("Cut it into pads, as it is damaged.");
    expect(way({ kind: "giveAway", cartons: 1 })).toContain("Give it away");
    expect(way({ kind: "giveAway", cartons: 9 })).toContain("Give 9 of them away");
    expect(way({ kind: "stopBuying", reason: "sits" })).toBe("Stop buying it.");
    expect(way({ kind: "stopBuying", reason: "moreThanPays" })).toBe("Stop buying it until it is run down.");
  });
});

describe("the advice on a carton that was not used in a year", () => {
  const notUsed: KeepFigure = { kind: "letGo", keep: 0, letGo: 5, keepYears: null, reason: "notUsed" };
  const ways = [
    { kind: "giveAway", cartons: 5 },
    { kind: "stopBuying", reason: "sits" },
  ] as const;

  it("is to use it up where it saves, and to buy no more until then", () => {
    const use = useOf([1500, 1500], 5);
    expect(use.withinStock?.parcels).toBe(2);
    expect(idleAdvice({ use, ways }, notUsed, NAMES, DOLLARS)).toEqual({
      first: "It was not used in a year: use it up on those first, and buy no more until it is gone.",
      ways: [],
    });
  });

  it("is what the rule says where it saves on nothing", () => {
    const advice = idleAdvice({ use: useOf([], 5), ways }, notUsed, NAMES, DOLLARS);
    expect(advice.first).toBe(keepWords(notUsed));
    expect(advice.ways).toHaveLength(2);
  });
});
