import { z } from "zod";
import { EVENT_LIMITS } from "#lib/forecast/planned-event";
import { addDays, type Day, day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { dayText, neededText } from "../../_parts/typed-fields";

const { letters, days, leastUplift, mostUplift } = EVENT_LIMITS;
const PERCENT = /^([+−–-]?)\s*(\d{1,4})\s*%?$/;
const UPLIFT_PROBLEM = `Write a whole number of percent from −${-leastUplift} to ${mostUplift}: 50 for half as much again, -20 for a fifth less.`;

/** Outside these years a digit was mistyped. */
const FIRST_DAY = day("2000-01-01");
const LAST_DAY = day("2099-12-31");

const eventDay = dayText.refine((on) => FIRST_DAY <= on && on <= LAST_DAY, {
  message: "Check the year.",
  abort: true,
});

const uplift = z
  .string(UPLIFT_PROBLEM)
  .regex(PERCENT, UPLIFT_PROBLEM)
  .transform(percentOf)
  .refine((percent) => leastUplift <= percent && percent <= mostUplift, UPLIFT_PROBLEM);

/**
 * A planned event as typed.
 *
 * @param itemTypeIds all item types that the shop knows, those out of use too
 * @returns the schema; of ticked item types it takes their ids, one a line
 */
export function eventForm(itemTypeIds: ReadonlySet<string>) {
  return z
    .object({
      name: neededText("Give the event a name: Christmas market, mugs on offer.", letters),
      fromDay: eventDay,
      toDay: eventDay,
      upliftPercent: uplift,
      itemTypeIds: z
        .string()
        .optional()
        .transform((ids) => [...new Set(ids?.split("\n") ?? [])])
        .refine(
          (ids) => ids.every((id) => itemTypeIds.has(id)),
          "One of these item types is not in the shop. Tick those of the list again.",
        ),
    })
    .superRefine(({ fromDay, toDay }, context) => {
      const problem = lastDayProblem(fromDay, toDay);
      if (problem !== null) context.addIssue({ code: "custom", path: ["toDay"], message: problem });
    });
}

/** What is wrong with the last day, and the days to choose from; null where it may stand. */
function lastDayProblem(fromDay: Day, toDay: Day): string | null {
  if (toDay < fromDay) {
    return `The last day lies before the first. Choose ${formatDay(fromDay, { year: true })} or a later day.`;
  }
  if (daysBetween(fromDay, toDay) < days) return null;
  const latest = formatDay(addDays(fromDay, days - 1), { year: true });
  return `An event lasts at most ${days} days. Choose ${latest} or an earlier day.`;
}

function percentOf(text: string): number {
  const [, sign = "", digits = ""] = PERCENT.exec(text) ?? [];
  return sign === "" || sign === "+" ? Number(digits) : 0 - Number(digits);
}
