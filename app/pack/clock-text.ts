import { formatDay } from "#lib/units/day-text";
import { instantOfTime, shopDay } from "#lib/units/instant";

/**
 * A time as the shop's clock shows it; one of another day has its day before it.
 * @param time milliseconds since 1970
 * @param now milliseconds since 1970
 * @param timeZone the shop's
 * @returns "14:05", or "Tue 24 Nov, 14:05"
 */
export function clockText(time: number, now: number, timeZone: string): string {
  const clock = new Intl.DateTimeFormat("en-GB", {
    timeZone,
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).format(time);
  const day = shopDay(instantOfTime(time), timeZone);
  return day === shopDay(instantOfTime(now), timeZone)
    ? clock
    : `${formatDay(day, { weekday: true })}, ${clock}`;
}
