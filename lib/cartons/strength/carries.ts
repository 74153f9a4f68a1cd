import type { CartonRating, CartonWall } from "#lib/cartons/strength/carton-rating";
import {
  type CertificateLimit,
  certificateLimit,
  type NoCertificate,
} from "#lib/cartons/strength/certificate-limit";
import { CERTIFICATE_ROWS, type CertificateRow } from "#lib/cartons/strength/certificate-rows";
import {
  type CartonLoad,
  grossPounds,
  isOver,
  type LoadLimit,
  tightestFirst,
  trustedPounds,
  unitedInches,
} from "#lib/cartons/strength/load-limit";
import { ratio } from "#lib/postage/ratio";

type Row = Extract<CertificateLimit, { readonly kind: "limit" }>;

/** Whether a certificate covers a load; `limits` has the one that bites first in front. */
export type CertificateVerdict =
  | { readonly kind: "carries" | "over"; readonly limits: readonly LoadLimit[]; readonly by: Row }
  | { readonly kind: "noCertificate"; readonly reason: NoCertificate };

/**
 * Whether a carton's certificate covers a packed load: gross weight and united inches both within the row of its rating.
 * It is what the maker promises for claims, not that the contents are protected.
 *
 * @param rating as printed
 * @param load gross weight and outside sizes
 * @param trustedPercent of the rated weight, a whole number from 1 to 100: less for reused board
 * @returns the limits, the one that bites first in front, or why there is no certificate
 * @throws RangeError if the rating or a side is not above zero, or the percentage not as said
 * @see freight classification item 222 and rule 41
 * @example carries({ kind: "edgeCrush", wall: "single", poundsPerInch: 32 }, load).kind // "carries"
 */
export function carries(rating: CartonRating, load: CartonLoad, trustedPercent = 100): CertificateVerdict {
  const by = certificateLimit(rating);
  if (by.kind === "none") return { kind: "noCertificate", reason: by.reason };
  const limits = tightestFirst(rowLimits(by.row, load, trustedPercent));
  return { kind: limits.some(isOver) ? "over" : "carries", limits, by };
}

/**
 * The weakest board of a wall whose certificate covers a load: what to ask for when cartons are bought.
 *
 * @param wall of the board
 * @param load gross weight and outside sizes
 * @returns its row, or null if no board of this wall covers it
 * @throws RangeError if a side is not above zero
 * @example neededRow("single", load)?.poundsPerInch // 32
 */
export function neededRow(wall: CartonWall, load: CartonLoad): CertificateRow | null {
  const fits = (row: CertificateRow) => !rowLimits(row, load, 100).some(isOver);
  return CERTIFICATE_ROWS.find((row) => row.wall === wall && fits(row)) ?? null;
}

function rowLimits(row: CertificateRow, load: CartonLoad, trustedPercent: number): readonly LoadLimit[] {
  const rule = "certificate";
  return [
    {
      rule,
      measure: "weight",
      limit: trustedPounds(row.grossPounds, trustedPercent),
      actual: grossPounds(load),
    },
    {
      rule,
      measure: "unitedInches",
      limit: ratio(BigInt(row.unitedInches)),
      actual: unitedInches(load),
    },
  ];
}
