import { describe, expect, it } from "vitest";
import { type AssumptionsQuestion, assumptions } from "#app/outlook/assumptions.ts";
import { FLAT_SEASON } from "#lib/forecast/season-profile";

const QUESTION: AssumptionsQuestion = {
  kind: "supply",
  forecast: { weeksSeen: 40, guessedShare: 0, likeId: null },
  guessedParcels: 10,
  likeName: null,
  correction: null,
  season: FLAT_SEASON,
  pattern: null,
  eventsAhead: 0,
  closedAhead: 0,
};

const words = (changed: Partial<AssumptionsQuestion>) =>
  assumptions({ ...QUESTION, ...changed }).map((each) => each.words);
const guesses = (changed: Partial<AssumptionsQuestion>) =>
  assumptions({ ...QUESTION, ...changed }).filter((each) => each.isGuess);

describe("what a forecast rests on", () => {
  it("holds no guess where the records carry it", () => {
    expect(guesses({})).toEqual([]);
    expect(words({})).toContain("It rests on 40 full weeks of records; weeks mostly closed are left out.");
  });

  it("calls the seller's guess one, with the way to change it", () => {
    const [guess] = guesses({ forecast: { weeksSeen: 2, guessedShare: 0.5, likeId: null } });
    expect(guess?.words).toContain("Half of this number is still your guess of 10 parcels a week");
    expect(guess?.link?.href).toBe("/setup#shop");
  });

  it("calls events and a season of one year guesses, and one of two years not", () => {
    expect(guesses({ eventsAhead: 2 })[0]?.words).toContain("Two planned events are counted in");
    const season = { ...FLAT_SEASON, believed: 0.4, years: 1 };
    expect(guesses({ season })[0]?.words).toContain("40\u00a0% is believed");
    expect(guesses({ season: { ...season, years: 2 } })).toEqual([]);
  });

  it("names the item type that a new one starts from", () => {
    const forecast = { weeksSeen: 1, guessedShare: 2 / 3, likeId: "teacup" };
    const [guess] = guesses({ kind: "item-type", forecast, likeName: "Teacups" });
    expect(guess?.words).toContain("Teacups");
    expect(guess?.words).toContain("Two thirds of this number");
  });

  it("tells what the counts found", () => {
    expect(words({ correction: 1.08 }).join(" ")).toContain("8\u00a0% more used than booked");
    expect(words({ correction: 0.9 }).join(" ")).toContain("10\u00a0% less used than booked");
    expect(words({ correction: 1.001 }).join(" ")).toContain("The counts agree");
    expect(words({}).join(" ")).toContain("too few counts");
    expect(words({ kind: "item-type" }).join(" ")).not.toMatch(/booked|too few counts/);
  });

  it("tells the pattern of use and the closed days", () => {
    const pattern = { kind: "lumpy", meanInterval: 3.24, squaredVariation: 0.8 } as const;
    expect(words({ pattern }).join(" ")).toContain("about every 3.2 weeks");
    expect(words({ closedAhead: 11 }).join(" ")).toContain("11 closed days");
  });
});
