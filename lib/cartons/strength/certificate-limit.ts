import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import { CERTIFICATE_ROWS, type CertificateRow } from "#lib/cartons/strength/certificate-rows";

/** Why a carton has no row: it has no certificate, or a lower rating than the lowest row. */
export type NoCertificate = "unrated" | "paperboard" | "belowLowest";

/** The row of a rating, and whether its figures were read or come from memory. */
export type CertificateLimit =
  | { readonly kind: "limit"; readonly row: CertificateRow; readonly from: "read" | "memory" }
  | { readonly kind: "none"; readonly reason: NoCertificate };

/**
 * The greatest gross weight and united inches (length + width + depth, outside) of a rating. A rating between two rows
 * has the lower one.
 *
 * @param rating as the certificate prints it
 * @returns the row, or why there is none
 * @throws RangeError if the rating's number is not above zero
 * @see freight classification item 222 and rule 41
 * @example certificateLimit({ kind: "edgeCrush", wall: "single", poundsPerInch: 32 }) // row of 65 lb and 75 in
 */
export function certificateLimit(rating: CartonRating): CertificateLimit {
  if (rating.kind === "unrated" || rating.kind === "paperboard") return { kind: "none", reason: rating.kind };
  const row = CERTIFICATE_ROWS.findLast((each) => reaches(each, rating));
  if (row === undefined) return { kind: "none", reason: "belowLowest" };
  return { kind: "limit", row, from: rating.kind === "edgeCrush" ? row.edgeCrushFrom : "read" };
}

type Rated = Exclude<CartonRating, { readonly kind: "unrated" | "paperboard" }>;

function reaches(row: CertificateRow, rating: Rated): boolean {
  switch (rating.kind) {
    case "edgeCrush":
      return row.wall === rating.wall && row.poundsPerInch <= checked(rating.poundsPerInch);
    case "burst":
      return row.wall === rating.wall && row.burstPsi !== null && row.burstPsi <= checked(rating.psi);
    case "puncture":
      return row.punctureUnits !== null && row.punctureUnits <= checked(rating.units);
    default:
      return rating satisfies never;
  }
}

function checked(value: number): number {
  if (!(value > 0 && Number.isFinite(value))) {
    throw new RangeError(`certificateLimit requires a rating above zero, got ${value}`);
  }
  return value;
}
