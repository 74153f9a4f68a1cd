import type { PatternOfUse } from "#lib/forecast/pattern-of-use";
import type { SeasonProfile } from "#lib/forecast/season-profile";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { countWord } from "../pack/parcel-words";
import { percentText } from "./percent-text";
import { shareWords } from "./share-words";

const PERCENT = 100;

/** One thing that a forecast rests on. */
export type Assumption = {
  readonly words: string;
  /** whether it is a guess and not something the records say */
  readonly isGuess: boolean;
  /** where it can be changed */
  readonly link?: { readonly href: string; readonly words: string };
};

/** What the assumptions are written from. */
export type AssumptionsQuestion = {
  readonly kind: "shop" | "item-type" | "supply";
  readonly forecast: Pick<SubjectForecast, "weeksSeen" | "guessedShare" | "likeId">;
  readonly guessedParcels: number | null;
  readonly likeName: string | null;
  readonly correction: number | null;
  readonly season: SeasonProfile;
  readonly pattern: PatternOfUse | null;
  /** planned events ahead */
  readonly eventsAhead: number;
  /** closed days ahead, within the weeks shown */
  readonly closedAhead: number;
};

/**
 * What a forecast rests on, the guesses first.
 *
 * @param question the forecast and what it was made from
 * @returns in order of weight
 */
export function assumptions(question: AssumptionsQuestion): Assumption[] {
  const found = [
    guessedRate(question),
    events(question.eventsAhead),
    weeksSeen(question.forecast.weeksSeen),
    pattern(question),
    correction(question),
    season(question.season),
    recipes(question.kind),
    closed(question.closedAhead),
    {
      words:
        "Parcels marked as unusual are left out. The coming weeks are taken to be like those behind: a new sales channel, or a holiday that nobody planned here, is not foreseen.",
      isGuess: false,
    },
  ];
  return found.filter((each) => each !== null);
}

function guessedRate({ forecast, guessedParcels, likeName }: AssumptionsQuestion): Assumption | null {
  const { guessedShare, likeId } = forecast;
  if (likeId !== null) {
    return {
      words: `It starts from the pieces a week of ${likeName ?? likeId}, the item type that is nearest in weight (where no weight is known, the middle one). ${sentenceStart(shareWords(guessedShare))} of this number is still that.`,
      isGuess: true,
    };
  }
  if (guessedShare <= 0 || guessedParcels === null) return null;
  return {
    words: `${sentenceStart(shareWords(guessedShare))} of this number is still your guess of ${guessedParcels} ${guessedParcels === 1 ? "parcel" : "parcels"} a week; the rest is what was recorded.`,
    isGuess: true,
    link: { href: "/setup#shop", words: "Change the guess" },
  };
}

function events(ahead: number): Assumption {
  const link = { href: "/outlook/events", words: ahead === 0 ? "Plan an event" : "Change the events" };
  if (ahead === 0) {
    return {
      words: "No planned event is ahead: every coming week counts as a usual one.",
      isGuess: false,
      link,
    };
  }
  return {
    words: `${sentenceStart(countWord(ahead))} planned ${ahead === 1 ? "event is" : "events are"} counted in, by as much as you said.`,
    isGuess: true,
    link,
  };
}

function weeksSeen(weeks: number): Assumption {
  if (weeks === 0) return { words: "No full week of records is behind it yet.", isGuess: false };
  return {
    words: `It rests on ${weeks === 1 ? "one full week" : `${weeks} full weeks`} of records; weeks mostly closed are left out.`,
    isGuess: false,
  };
}

function pattern({ kind, pattern: of }: AssumptionsQuestion): Assumption | null {
  if (of === null || kind === "shop") return null;
  const verb = kind === "supply" ? "used" : "sold";
  const words = {
    smooth: `It is ${verb} in most weeks, in like amounts.`,
    erratic: `It is ${verb} in most weeks, in amounts that differ a lot.`,
    intermittent: `It is ${verb} now and then, in like amounts: about every ${Number(of.meanInterval.toFixed(1))} weeks.`,
    lumpy: `It is ${verb} now and then, in amounts that differ a lot: about every ${Number(of.meanInterval.toFixed(1))} weeks. Such use is hard to foresee.`,
  }[of.kind];
  return { words, isGuess: false };
}

function correction({ kind, correction: factor }: AssumptionsQuestion): Assumption | null {
  if (kind !== "supply") return null;
  if (factor === null) {
    return {
      words: "The booked use is taken as it stands: there are too few counts to correct it.",
      isGuess: false,
    };
  }
  const percent = Math.round(Math.abs(factor - 1) * PERCENT);
  if (percent === 0) return { words: "The counts agree with the booked use.", isGuess: false };
  return {
    words: `The counts found ${percentText(percent)} ${factor > 1 ? "more" : "less"} used than booked: past use is multiplied by ${Number(factor.toFixed(2))}.`,
    isGuess: false,
  };
}

function season({ believed, years }: SeasonProfile): Assumption {
  if (believed <= 0) return { words: "No season is counted in.", isGuess: false };
  const learnt = years === 1 ? "one year" : `${countWord(years)} years`;
  return {
    words: `The season of the whole shop is counted in: of what ${learnt} showed, ${percentText(believed * PERCENT)} is believed.`,
    isGuess: years === 1,
  };
}

function recipes(kind: AssumptionsQuestion["kind"]): Assumption | null {
  if (kind !== "supply") return null;
  return {
    words:
      "Past weeks are told as they would have been by today’s recipes, so that a changed recipe counts at once.",
    isGuess: false,
  };
}

function closed(days: number): Assumption | null {
  if (days === 0) return null;
  return {
    words: `${days === 1 ? "One closed day" : `${days} closed days`} in the coming weeks take nothing.`,
    isGuess: false,
    link: { href: "/setup#closed", words: "Change the closed days" },
  };
}

function sentenceStart(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
