import type { PastWeek } from "#prisma/records/forecast-parts";
import { countWord } from "../pack/parcel-words";
import { changeWords } from "./change-words";
import { lastWeeksSum } from "./last-weeks-sum";
import { bookedFigure } from "./quantity";
import type { RunningTotal } from "./running-totals";
import { subjectFinding } from "./subject-finding";

/**
 * The first line of Outlook: parcels a week, their sum with its band, and how that compares.
 *
 * @param total the parcels of the next weeks; null where none can be forecast
 * @param weeks weeks that are over, oldest first
 * @returns a sentence
 */
export function shopFinding(
  total: RunningTotal | null,
  weeks: readonly Pick<PastWeek, "restated">[],
): string {
  if (total === null) return "What the supplies will take in the coming weeks.";
  const finding = subjectFinding(null, total, "parcel");
  const before = lastWeeksSum(weeks, total.weeks);
  if (before === null || before <= 0 || total.mean <= 0) return finding;
  const { sentence } = changeWords(total.mean, before);
  return `${finding.slice(0, -1)}, ${sentence} in the last ${countWord(total.weeks)} (${bookedFigure(before)}).`;
}
