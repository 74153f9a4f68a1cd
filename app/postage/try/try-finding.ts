import { formatMoney } from "#lib/units/money";
import type { ShownTerms, TriedService } from "./tried-service";

/**
 * What trying a parcel found.
 *
 * @param tried an answer for each service; null before anything was asked
 * @param shown how money is shown
 */
export function tryFinding(
  tried: readonly TriedService[] | null,
  { currency, minorDigits }: Pick<ShownTerms, "currency" | "minorDigits">,
): string {
  if (tried === null) return "What would a parcel cost to send?";
  const priced = tried.flatMap((each) => (each.minor === null ? [] : [{ ...each, minor: each.minor }]));
  const [first] = priced;
  if (first === undefined) return "No service takes this parcel by the cards that hold on that day.";
  const cheapest = priced.reduce((least, each) => (each.minor < least.minor ? each : least), first);
  const money = formatMoney(cheapest.minor, currency, minorDigits);
  const open = cheapest.isSizeOpen ? ", if its size allows" : "";
  return `${priced.length === 1 ? "" : "Cheapest: "}${money} with ${cheapest.service}${open}.`;
}
