import type { Day } from "#lib/units/day";
import { DEMO_ZONES } from "#prisma/demo/demo-terms";
import type { KeptRateCard } from "#prisma/records/rate-cards";

const MOST_POUNDS = 30;
const MINOR_PER_MAJOR = 100;

/**
 * The rate card by which the demo's parcels pay: a first price and one for each pound begun, by zone. Invented.
 *
 * @param validFrom the first day of the demo
 * @returns the card as it is kept
 */
export function demoRateCard(validFrom: Day): KeptRateCard {
  const head = ["up to", ...DEMO_ZONES.map((zone) => zone.name)];
  const steps = Array.from({ length: MOST_POUNDS }, (_, at) => {
    const pounds = at + 1;
    const prices = DEMO_ZONES.map((zone) =>
      ((zone.startMinor + pounds * zone.poundMinor) / MINOR_PER_MAJOR).toFixed(2),
    );
    return [`${pounds} lb`, ...prices];
  });
  return {
    id: "demo-parcels",
    service: "Parcels",
    validFrom,
    validTo: null,
    table: [head, ...steps].map((cells) => cells.join("\t")).join("\n"),
    zoneIds: DEMO_ZONES.map((zone) => zone.id),
  };
}
