import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PastParcel } from "#lib/packing/weight/weighed-parcel";
import { evenRandom } from "#lib/statistics/even-random";
import { gammaDraw } from "#lib/statistics/gamma-draw";
import { normalDraw, type Random } from "#lib/statistics/normal-draw";
import { addDays, type Day, day } from "#lib/units/day";

/** A played parcel: what the program sees, what the scale should have shown, and what one who knows all would say. */
export type PlayedParcel = {
  readonly parcel: PastParcel;
  /** grams, before a slip of the keys */
  readonly trueMg: number;
  /** median of what such a parcel weighs on that day */
  readonly oracleMg: number;
};

export const FIRST_DAY = day("2025-01-06");
const DAYS = 540;
const G = 1000;
const LABEL_G = 22;
const ORACLE_DRAWS = 101;
const SCALE_STEP_G = 5;
/** Ounces typed as pounds, pounds as ounces, ounces as grams, kilograms as pounds. */
const SLIPS = [16, 1 / 16, 1 / 28.349523125, 0.45359237];

type Kind = {
  readonly typeId: string;
  readonly cartonId: string;
  readonly style: CushionStyle;
  readonly rate: number;
  readonly pieceG: number;
  readonly perPieceG: number;
  readonly perParcelG: number;
  readonly factor: number;
  readonly offsetG: number;
  readonly pieceSpread: number;
  readonly handSpread: number;
  readonly driftShare: number;
  readonly driftPhase: number;
  /** day from which this carton's board is heavier, and by how much */
  readonly board: { readonly from: number; readonly grams: number };
};

/**
 * A shop that packs for a year and a half. Cards are wrong by some 15 %, hands differ from day to day by a gamma
 * distribution, one parcel in 30 is wrapped generously, pieces are handmade, habits drift over the seasons, one batch of
 * board is heavier, one reading in a hundred is mistyped, one in ten is missing. None of it has the form of the model.
 *
 * @param seed whole number
 * @returns parcels in the order packed
 */
export function packedParcels(seed: number): PlayedParcel[] {
  const random = evenRandom(seed);
  const kinds = kindsOf(random);
  return Array.from({ length: DAYS }, (_, at) => at).flatMap((at) =>
    kinds.flatMap((kind) => {
      const count = poissonCount(kind.rate, random);
      return Array.from({ length: count }, () => played(kind, at, random));
    }),
  );
}

/** Grams of packing by style: round each piece, and once a parcel beside the carton. */
const STYLES = [
  { style: "paper", perPieceG: 60, fillG: 350 },
  { style: "bubble", perPieceG: 25, fillG: 120 },
] as const;
const CARTON_G = 250;

function kindsOf(random: Random): Kind[] {
  return Array.from({ length: 8 }, (_, type) => type).flatMap((type) => {
    const pieceG = 150 * 10 ** random();
    const cardError = Math.exp(0.15 * normalDraw(random));
    const cartons = random() < 0.5 ? 2 : 1;
    return Array.from({ length: cartons }, (_carton, carton) => carton).flatMap((carton) =>
      STYLES.slice(0, random() < 0.4 ? 2 : 1).map(
        ({ style, perPieceG, fillG }): Kind => ({
          typeId: `type-${type}`,
          cartonId: `carton-${type}-${carton}`,
          style,
          rate: 0.35 / (1 + type) / (1 + carton),
          pieceG,
          perPieceG: perPieceG + 0.15 * pieceG * random(),
          perParcelG: fillG + CARTON_G + 150 * random(),
          factor: cardError * Math.exp(0.06 * normalDraw(random)),
          offsetG: 12 * normalDraw(random),
          pieceSpread: 0.01 + 0.04 * random(),
          handSpread: 0.06 + 0.12 * random(),
          driftShare: 0.1 * random(),
          driftPhase: random(),
          board: { from: DAYS * (0.3 + 0.5 * random()), grams: random() < 0.2 ? 45 : 0 },
        }),
      ),
    );
  });
}

function poissonCount(mean: number, random: Random): number {
  let count = 0;
  for (let left = random(); left > Math.exp(-mean); left *= random()) count += 1;
  return count;
}

function played(kind: Kind, at: number, random: Random): PlayedParcel {
  const pieces = 1 + Math.floor(2.4 * random() * random());
  const seen = Math.round(grams(kind, pieces, at, random) / SCALE_STEP_G) * SCALE_STEP_G;
  const draws = Array.from({ length: ORACLE_DRAWS }, () => grams(kind, pieces, at, random));
  draws.sort((a, b) => a - b);
  const slip = SLIPS[Math.floor(SLIPS.length * random())] ?? 1;
  const typed = random() < 0.01 ? seen * slip : seen;
  const isWeighed = random() < 0.9;
  return {
    parcel: {
      itemTypeId: kind.typeId,
      cartonId: kind.cartonId,
      style: kind.style,
      packedOn: packedOn(at),
      predictedMg: Math.round(G * (pieces * (kind.pieceG + kind.perPieceG) + kind.perParcelG)),
      scaleMg: isWeighed ? Math.round(G * typed) : null,
      unusual: false,
    },
    trueMg: G * seen,
    oracleMg: G * (draws[(ORACLE_DRAWS - 1) / 2] ?? 0),
  };
}

function packedOn(at: number): Day {
  return addDays(FIRST_DAY, at);
}

/** What a parcel weighs; everything that differs from parcel to parcel is drawn. */
function grams(kind: Kind, pieces: number, at: number, random: Random): number {
  const season = 1 + kind.driftShare * Math.sin(2 * Math.PI * (at / DAYS + kind.driftPhase));
  const generous = random() < 1 / 30 ? 1.15 + 0.4 * random() : 1;
  const shape = 1 / kind.handSpread ** 2;
  const hand = gammaDraw({ shape, scale: 1 / shape }, random) * generous;
  const wares = Array.from(
    { length: pieces },
    () => kind.pieceG * (1 + kind.pieceSpread * 1.7 * (2 * random() - 1)),
  );
  const packing = (pieces * kind.perPieceG + kind.perParcelG) * kind.factor * season * hand;
  const board = at >= kind.board.from ? kind.board.grams : 0;
  return wares.reduce((sum, each) => sum + each, 0) + packing + kind.offsetG + board + LABEL_G;
}
