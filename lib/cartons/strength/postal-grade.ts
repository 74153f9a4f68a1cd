import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import { certificateLimit } from "#lib/cartons/strength/certificate-limit";
import {
  type CartonLoad,
  girthInches,
  grossPounds,
  isOver,
  type LoadLimit,
  tightestFirst,
  trustedPounds,
} from "#lib/cartons/strength/load-limit";
import type { LoadType } from "#lib/cartons/strength/load-type";
import { ratio } from "#lib/postage/ratio";

/** A row of the post's table of box grades; null where the table lists no weight. */
type PostalRow = {
  readonly burstPsi: number;
  readonly commonPounds: number | null;
  readonly difficultPounds: number | null;
  readonly girthInches: number;
};

/** A national post's box grades of 2002, weakest first; confirm against the post's present manual. */
const POSTAL_ROWS: readonly PostalRow[] = [
  { burstPsi: 125, commonPounds: 20, difficultPounds: null, girthInches: 67 },
  { burstPsi: 175, commonPounds: 40, difficultPounds: 20, girthInches: 100 },
  { burstPsi: 200, commonPounds: 65, difficultPounds: 45, girthInches: 108 },
  { burstPsi: 275, commonPounds: 70, difficultPounds: 65, girthInches: 108 },
  { burstPsi: 350, commonPounds: null, difficultPounds: 70, girthInches: 108 },
];
/** Triple wall is in no row of the table; it is taken as the strongest one. */
const TRIPLE_AS_PSI = 350;
/** Boxes of thin card, for loads that are not difficult; their size was not read and is taken as the lowest grade's. */
const PAPERBOARD_POUNDS = 10;
const PAPERBOARD_GIRTH = 67;

/** What a grade may hold; `paired` where edge crush was turned into burst by the certificate's row. */
export type PostalLimit =
  | {
      readonly kind: "limit";
      readonly pounds: number;
      readonly girthInches: number;
      readonly burstPsi: number | null;
      readonly paired: boolean;
    }
  | { readonly kind: "notAcceptable"; readonly reason: "unrated" | "paperboard" | "grade" };

/** Whether a box grade covers a load; `limits` has the one that bites first in front. */
export type PostalVerdict =
  | { readonly kind: "carries" | "over"; readonly limits: readonly LoadLimit[]; readonly by: PostalLimit }
  | Extract<PostalLimit, { readonly kind: "notAcceptable" }>;

/**
 * The post's limits for board of a rating: less for difficult loads, which fragile goods are.
 *
 * @param rating as printed
 * @param type of the load
 * @returns greatest weight, and length and girth; or why such a box is not acceptable
 * @throws RangeError if the rating's number is not above zero
 * @see a national post's guide to packing, 2002, table of box grades: tests/reference/carton-strength.test.ts
 * @example postalLimit({ kind: "burst", wall: "single", psi: 200 }, "difficult") // 45 lb, 108 in
 */
export function postalLimit(rating: CartonRating, type: LoadType): PostalLimit {
  if (rating.kind === "paperboard") return paperboardLimit(type);
  const burstPsi = burstOf(rating);
  if (burstPsi === null)
    return { kind: "notAcceptable", reason: rating.kind === "unrated" ? "unrated" : "grade" };
  const row = POSTAL_ROWS.findLast((each) => each.burstPsi <= burstPsi && poundsOf(each, type) !== null);
  const pounds = row === undefined ? null : poundsOf(row, type);
  if (row === undefined || pounds === null) return { kind: "notAcceptable", reason: "grade" };
  const paired = rating.kind !== "burst";
  return { kind: "limit", pounds, girthInches: row.girthInches, burstPsi: row.burstPsi, paired };
}

/**
 * Whether the post's grade of a box covers a packed load.
 *
 * @param rating as printed
 * @param load gross weight and outside sizes
 * @param type of the load
 * @param trustedPercent of the grade's weight, a whole number from 1 to 100: less for reused board
 * @throws RangeError if the rating or a side is not above zero, or the percentage not as said
 * @example carriesByPost({ kind: "burst", wall: "single", psi: 125 }, load, "difficult").kind // "notAcceptable"
 */
export function carriesByPost(
  rating: CartonRating,
  load: CartonLoad,
  type: LoadType,
  trustedPercent = 100,
): PostalVerdict {
  const by = postalLimit(rating, type);
  if (by.kind === "notAcceptable") return by;
  const limits = tightestFirst(postalLimits(by.pounds, by.girthInches, load, trustedPercent));
  return { kind: limits.some(isOver) ? "over" : "carries", limits, by };
}

/**
 * The weakest grade that the post takes for a load.
 *
 * @param load gross weight and outside sizes
 * @param type of the load
 * @returns burst strength in psi, or null if no grade covers it
 * @throws RangeError if a side is not above zero
 * @example neededGrade(load, "difficult") // 200
 */
export function neededGrade(load: CartonLoad, type: LoadType): number | null {
  const row = POSTAL_ROWS.find((each) => {
    const pounds = poundsOf(each, type);
    return pounds !== null && !postalLimits(pounds, each.girthInches, load, 100).some(isOver);
  });
  return row?.burstPsi ?? null;
}

function paperboardLimit(type: LoadType): PostalLimit {
  if (type === "difficult") return { kind: "notAcceptable", reason: "paperboard" };
  const limits = { pounds: PAPERBOARD_POUNDS, girthInches: PAPERBOARD_GIRTH };
  return { kind: "limit", ...limits, burstPsi: null, paired: false };
}

function burstOf(rating: CartonRating): number | null {
  if (rating.kind === "burst") return rating.psi;
  const limit = certificateLimit(rating);
  return limit.kind === "none" ? null : (limit.row.burstPsi ?? TRIPLE_AS_PSI);
}

function poundsOf(row: PostalRow, type: LoadType): number | null {
  return type === "difficult" ? row.difficultPounds : row.commonPounds;
}

function postalLimits(
  pounds: number,
  girth: number,
  load: CartonLoad,
  trustedPercent: number,
): readonly LoadLimit[] {
  const rule = "postalGrade";
  return [
    { rule, measure: "weight", limit: trustedPounds(pounds, trustedPercent), actual: grossPounds(load) },
    { rule, measure: "lengthAndGirth", limit: ratio(BigInt(girth)), actual: girthInches(load) },
  ];
}
