import { unitsOf } from "#lib/units/amount";
import { formatMass, MILLIGRAMS_PER_POUND, milligrams, parseMass } from "#lib/units/mass";
import { DEMO_ZONES } from "#prisma/demo/demo-terms";
import type { Random } from "#prisma/demo/seeded-random";
import type { ParcelBody } from "#prisma/records/parcel-body";

/** Papers in each parcel, and an odd carton that is in no list. Guessed. */
const PAPERS_MG = 10_000;
const ODD_CARTON_MG = 420_000;
const SCATTER = 0.06;
const SHARE_WEIGHED = 0.85;
/** What the seller adds to the bill before she promises a band of whole pounds: a little too little. */
const PROMISED_OVER_BILL = 1.02;
/** Of so many parcels the carrier charges one for a step more, and of so many one as for the next zone. */
const ONE_STEP_MORE_OF = 43;
const NEXT_ZONE_OF = 151;

/** Masses in milligrams: of a piece by item type, of a use unit by supply. */
export type DemoMasses = {
  readonly pieces: ReadonlyMap<string, number>;
  readonly supplies: ReadonlyMap<string, number>;
};

/**
 * Puts a demo parcel on the scale and pays its postage. Some are never weighed, as in a real shop.
 *
 * @param random - where the scatter comes from
 * @param body - the parcel
 * @param masses - what pieces and supplies weigh
 * @returns the parcel with the band promised, a scale reading to the ounce, as typed, and postage in minor units
 * @throws RangeError if the scale's text cannot be read back
 * @example weighedParcel(random, body, masses).scaleTyped; // "1 lb 12 oz"
 */
export function weighedParcel(random: Random, body: ParcelBody, masses: DemoMasses): ParcelBody {
  const pieces = body.pieces.reduce(
    (sum, part) => sum + part.pieces * massOf(masses.pieces, part.itemTypeId),
    0,
  );
  const soft = body.lines.reduce(
    (sum, line) => sum + unitsOf(line.amount) * massOf(masses.supplies, line.supplyId),
    0,
  );
  const cartons = body.cartons.reduce(
    (sum, carton) =>
      sum + (carton.supplyId === null ? ODD_CARTON_MG : massOf(masses.supplies, carton.supplyId)),
    0,
  );
  const bill = pieces + soft + cartons;
  const promisedPounds = Math.max(1, Math.ceil((bill * PROMISED_OVER_BILL) / MILLIGRAMS_PER_POUND));
  const promised = {
    mg: milligrams(Math.round(promisedPounds * MILLIGRAMS_PER_POUND)),
    typed: `${promisedPounds} lb`,
  };
  const real = (bill + PAPERS_MG) * (1 + SCATTER * (random() - 0.5));
  const postageMinor = paidMinor(body, Math.ceil(real / MILLIGRAMS_PER_POUND));
  if (random() > SHARE_WEIGHED) return { ...body, promised, postageMinor };
  const scaleTyped = formatMass(milligrams(Math.round(real)), "imperial");
  const read = parseMass(scaleTyped, "imperial");
  if (read.kind !== "mass")
    throw new RangeError(`weighedParcel requires a mass that can be read, got ${scaleTyped}`);
  return { ...body, promised, postageMinor, scaleTyped, scaleMg: read.mg };
}

/** By the demo's rate card; a few were charged too much. Chance is not asked, so that all else stays as it was. */
function paidMinor({ id, zoneId }: ParcelBody, pounds: number): number | null {
  const number = Number(/\d+$/.exec(id)?.[0] ?? 0);
  const zoneAt = DEMO_ZONES.findIndex((each) => each.id === zoneId);
  const isNextZone = number % NEXT_ZONE_OF === 1 && zoneAt === 0;
  const zone = DEMO_ZONES[isNextZone ? zoneAt + 1 : zoneAt];
  const charged = number % ONE_STEP_MORE_OF === 1 ? pounds + 1 : pounds;
  return zone === undefined ? null : zone.startMinor + charged * zone.poundMinor;
}

function massOf(masses: ReadonlyMap<string, number>, id: string): number {
  const mass = masses.get(id);
  if (mass === undefined) throw new RangeError(`weighedParcel requires the mass of ${id}, got none`);
  return mass;
}
