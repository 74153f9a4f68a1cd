import { carries } from "#lib/cartons/strength/carries";
import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import type { NoCertificate } from "#lib/cartons/strength/certificate-limit";
import { type CartonLoad, isOver, type LoadLimit, tightestFirst } from "#lib/cartons/strength/load-limit";
import type { LoadType } from "#lib/cartons/strength/load-type";
import { carriesByPost } from "#lib/cartons/strength/postal-grade";
import {
  type BoardCondition,
  type TrustedBoard,
  trustOf,
  USUAL_TRUST,
} from "#lib/cartons/strength/trusted-board";

/** How a carton would be used. */
export type OuterUse = {
  readonly type: LoadType;
  readonly condition: BoardCondition;
  readonly trust?: TrustedBoard;
};

/** Why a carton is none to send in: no certificate, a rating below all rows, or a grade that fragile goods may not have. */
export type InnerReason = NoCertificate | "grade";

/**
 * Whether a carton may be the outer one. `limits` are those of the certificate and of the post, the one that bites first
 * in front; `isGuess` where the board is trusted with less than its rating.
 */
export type OuterVerdict =
  | {
      readonly kind: "carries" | "over";
      readonly limits: readonly LoadLimit[];
      readonly trustedPercent: number;
      readonly isGuess: boolean;
    }
  | { readonly kind: "innerOnly"; readonly reason: InnerReason };

/**
 * Whether a carton may be the outer one of a parcel: within its certificate, and within the post's box grade for such a
 * load, which is stricter for fragile goods. An unrated carton is an inner box. An estimate: it does not certify that
 * contents are protected, and the carrier's own rules decide.
 *
 * @param rating as printed
 * @param load gross weight and outside sizes
 * @param use type of the load, and whether the board was used before
 * @throws RangeError if the rating or a side is not above zero, or a percentage is not whole from 1 to 100
 * @example outerCarton({ kind: "unrated" }, load, { type: "difficult", condition: "new" }) // { kind: "innerOnly", reason: "unrated" }
 */
export function outerCarton(rating: CartonRating, load: CartonLoad, use: OuterUse): OuterVerdict {
  const { percent, isGuess } = trustOf(use.condition, use.trust ?? USUAL_TRUST);
  const certificate = carries(rating, load, percent);
  if (certificate.kind === "noCertificate") return { kind: "innerOnly", reason: certificate.reason };
  const postal = carriesByPost(rating, load, use.type, percent);
  if (postal.kind === "notAcceptable") return { kind: "innerOnly", reason: postal.reason };
  const limits = tightestFirst([...certificate.limits, ...postal.limits]);
  return { kind: limits.some(isOver) ? "over" : "carries", limits, trustedPercent: percent, isGuess };
}
