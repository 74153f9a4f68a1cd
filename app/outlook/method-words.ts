/** What a way of forecasting does, for a seller. */
export type MethodWords = {
  /** for a table */
  readonly name: string;
  /** one plain sentence */
  readonly sentence: string;
};

/** Every way that a forecast can be made, by the name it has in the reckoning. */
export const METHOD_WORDS: Readonly<Record<string, MethodWords>> = {
  "first weeks": {
    name: "Your guess and the first weeks",
    sentence:
      "In the first weeks the shop’s parcels a week start from your guess, where you made one, and move to the records as they come.",
  },
  "pieces by their recipes": {
    name: "Pieces by their recipes",
    sentence:
      "The expected pieces of each item type, times what today’s recipes take, times how much more or less than the recipes was really used.",
  },
  "recipes and own history": {
    name: "Mean of recipes and own history",
    sentence:
      "The mean of two ways: the expected pieces by today’s recipes, and this supply’s own use in past weeks.",
  },
  "share of the trade": {
    name: "Share of the trade",
    sentence:
      "The shop’s trade as a whole, times this item type’s share of it in the past weeks, newer weeks counting more.",
  },
  "share of the trade and own history": {
    name: "Mean of share and own history",
    sentence:
      "The mean of two ways: this item type’s share of the shop’s trade, and its own pieces in past weeks.",
  },
  "like another item type": {
    name: "Like another item type",
    sentence:
      "A new item type starts from the pieces a week of an older one that is most like it, and moves to its own as they come.",
  },
  "several methods": {
    name: "Mean of the nearest methods",
    sentence: "The mean of the few methods on its own past weeks that were nearest so far.",
  },
  "newest week": { name: "Newest week", sentence: "Every coming week as the newest one." },
  "a season ago": {
    name: "A season ago",
    sentence: "Every coming week as the same week of the last season.",
  },
  "mean of all weeks": {
    name: "Mean of all weeks",
    sentence: "The plain mean of all past weeks.",
  },
  "moving average": {
    name: "Mean of the last weeks",
    sentence: "The plain mean of the last weeks, as many of them as did best so far.",
  },
  "weighted moving average": {
    name: "Mean of the last weeks, newest heaviest",
    sentence: "The mean of the last weeks, the newest counting the most.",
  },
  "simple smoothing": {
    name: "Smoothing",
    sentence:
      "A level that each week moves a part of the way to what was used, so that newer weeks count more.",
  },
  "linear trend": {
    name: "Level and trend",
    sentence: "A level and a rise or fall a week, both moved by each new week.",
  },
  "damped trend": {
    name: "Level and fading trend",
    sentence: "A level and a rise or fall that is taken to fade out.",
  },
  "likelihood smoothing": {
    name: "The likeliest smoothing",
    sentence:
      "Of many ways to smooth with or without a trend and a season, the one that explains the past best for what it takes from it.",
  },
  theta: {
    name: "Level and half the trend",
    sentence:
      "The mean of a smoothed level and a straight line through all weeks: half of the trend is believed.",
  },
  "trend and added season": {
    name: "Trend and season, added",
    sentence: "A level, a trend and a season that adds so much to each part of the year.",
  },
  "trend and season factor": {
    name: "Trend and season, as a factor",
    sentence: "A level, a trend and a season that multiplies each part of the year.",
  },
  "trend and added season, classic start": {
    name: "Trend and season, added; classic start",
    sentence: "A level, a trend and an added season, started from the first season as the textbooks do.",
  },
  "trend and season factor, classic start": {
    name: "Trend and season, as a factor; classic start",
    sentence: "A level, a trend and a season factor, started from the first season as the textbooks do.",
  },
  "size and chance": {
    name: "Size and chance of a use",
    sentence:
      "For use now and then: how large a use is, times the chance that a week has one; it fades when uses stop.",
  },
  "size over interval": {
    name: "Size over interval",
    sentence: "For use now and then: how large a use is, over the weeks from one to the next.",
  },
  "size over interval, less its bias": {
    name: "Size over interval, set right",
    sentence:
      "For use now and then: how large a use is, over the weeks from one to the next, less what that is known to say too much.",
  },
};

/**
 * Words for a way of forecasting.
 *
 * @param name as the reckoning calls it
 * @returns its own name as the words where none are known: an old kept forecast may name a way that is gone
 * @example methodWords("newest week").sentence // "Every coming week as the newest one."
 */
export function methodWords(name: string): MethodWords {
  return METHOD_WORDS[name] ?? { name, sentence: `The way called “${name}”.` };
}
