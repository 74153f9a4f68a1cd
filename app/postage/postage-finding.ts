import { addDays, type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { KeptRateCard, ReadRateCard } from "#prisma/records/rate-cards";
import type { ShopService } from "./shop-services";

const SOON_DAYS = 60;

/**
 * What the screen found about the shop's postage.
 *
 * @param services the shop's services, the main one first
 * @param today the shop's day
 * @returns one sentence, or one for each service that needs a look
 */
export function postageFinding(services: readonly ShopService[], today: Day): string {
  const [main, ...others] = services;
  if (main === undefined) {
    return "No prices yet: paste your carrier's table to see what a parcel costs and which weight band to promise.";
  }
  const alarms = others.filter((each) => isRunningOut(each, today)).map((each) => serviceState(each, today));
  return [serviceState(main, today), ...alarms].join(" ");
}

function isRunningOut({ holding, coming }: ShopService, today: Day): boolean {
  if (holding === null) return true;
  return holding.validTo !== null && daysBetween(today, holding.validTo) <= SOON_DAYS && coming.length === 0;
}

/** Which card of a service holds, until when, and what follows. */
export function serviceState({ service, holding, coming, past }: ShopService, today: Day): string {
  const [next] = coming;
  if (holding === null) return `${notHolding(service, past[0])} ${wayOut(next)}`;
  const from = formatDay(holding.validFrom, { year: true });
  const { validTo } = holding;
  if (validTo === null) return `The prices of ${service} from ${from} hold today.`;
  const to = formatDay(validTo, { year: true });
  const isFollowed = next?.validFrom === addDays(validTo, 1);
  if (isFollowed) return `The prices of ${service} from ${from} hold until ${to}; the next card is there.`;
  const days = daysBetween(today, validTo);
  const left = days === 0 ? "today is the last day" : `in ${days} ${days === 1 ? "day" : "days"}`;
  return `The prices of ${service} end on ${to}, ${left}, and no card follows: add the one that does.`;
}

function notHolding(service: string, last: ReadRateCard | undefined): string {
  return last?.validTo == null
    ? `No card of ${service} holds today.`
    : `The prices of ${service} ran out on ${formatDay(last.validTo, { year: true })}.`;
}

function wayOut(next: ReadRateCard | undefined): string {
  return next === undefined
    ? "Add the card that holds now."
    : `The next begins on ${formatDay(next.validFrom, { year: true })}: add what holds until then.`;
}

/**
 * Who says the prices of a card, and when they were copied.
 *
 * @param kept with its source
 */
export function sourceWords({ source, readOn }: Pick<KeptRateCard, "source" | "readOn">): string {
  const read = readOn === null ? "" : `, copied on ${formatDay(readOn, { year: true })}`;
  return source === null ? `Source not written down${read}.` : `Source: ${source}${read}.`;
}
