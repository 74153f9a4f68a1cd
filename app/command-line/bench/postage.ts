import { parcelSize } from "#lib/postage/parcel-size";
import { priceLadder } from "#lib/postage/price-ladder";
import { micrometres } from "#lib/units/length";
import { type Measurement, measurement, nearestRank } from "../measurement";
import { benchCard } from "./postage/bench-card";
import { askedAll, benchQuestions } from "./postage/bench-questions";

const AREA = "postage";
/** What a screen may spend on the postage of all its item types and styles. */
const ALL_MS = 50;
const COLD_MS = 5;
const ROUNDS = 25;
/** Runs before the clock counts: the server that answers screens has run for long. */
const WARM_UP = 40;
const FURTHEST_MG = 40_000_000;

/** Postage: how fast it is expected over weights and zones for all that a shop sends, and how fast a new card is known. */
export async function measure(): Promise<Measurement[]> {
  const card = benchCard();
  const questions = benchQuestions(card);
  for (let round = 0; round < WARM_UP; round += 1) askedAll(questions);
  const rounds = Array.from({ length: ROUNDS }, () => timed(() => askedAll(questions)));
  const size = parcelSize([micrometres(400_000), micrometres(300_000), micrometres(200_000)], null, "box");
  const cold = Array.from({ length: ROUNDS }, () => {
    const fresh = benchCard();
    const asked = { card: fresh, zone: fresh.zones[0] ?? "", size, shipDay: fresh.validFrom };
    return timed(() => priceLadder(asked, FURTHEST_MG));
  });
  const what = `${questions.length} parcels (20 item types, 3 styles), ${card.zones.length} zones, ${card.bands[0]?.steps.length ?? 0} steps`;
  const row = { area: AREA, unit: "ms" };
  return [
    measurement({
      ...row,
      name: `${what}: median of ${ROUNDS}`,
      value: nearestRank(rounds, 0.5),
      target: ALL_MS,
    }),
    measurement({ ...row, name: `${what}: worst`, value: Math.max(...rounds), target: null }),
    measurement({
      ...row,
      name: "a ladder of a new card: median",
      value: nearestRank(cold, 0.5),
      target: COLD_MS,
    }),
  ];
}

function timed(work: () => void): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}
