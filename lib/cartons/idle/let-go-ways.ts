import { type CandidateCarton, cartonStock } from "#lib/cartons/choice/candidate-carton";
import type { CutHeight } from "#lib/cartons/idle/cut-heights";
import type { KeepFigure } from "#lib/cartons/keeping/keep-figure";
import { certificateLimit } from "#lib/cartons/strength/certificate-limit";
import { postalLimit } from "#lib/cartons/strength/postal-grade";
import { type Block, blockVolume } from "#lib/packing/block";
import { cartonBlank } from "#lib/packing/carton-blank";
import { boxInBox } from "#lib/packing/fill/box-in-box";

/** A carton that sits, and what was found out about it. */
export type LetGoQuestion = {
  readonly carton: CandidateCarton;
  /** torn, creased or damp: no stock to send in, whatever is printed on it */
  readonly isDamaged: boolean;
  /** parcels of the past year that could have gone in it or went in it */
  readonly fitting: number;
  readonly heights: readonly CutHeight[];
  readonly figure: KeepFigure;
  /** other cartons that could go round it */
  readonly others: readonly { readonly id: string; readonly inside: Block }[];
  /** gap asked for round an inner carton, micrometres from zero */
  readonly gapUm: number;
};

/** A way to make use of a carton that sits or to be rid of it. */
export type LetGoWay =
  | { readonly kind: "cutDown"; readonly heights: readonly CutHeight[] }
  | {
      readonly kind: "innerBox";
      readonly reason: "damaged" | "notForSending";
      /** cartons that leave the gap round it, smallest first */
      readonly outerIds: readonly string[];
    }
  | {
      readonly kind: "pads";
      readonly reason: "damaged" | "nothingFits";
      /** null where the count is due */
      readonly cartons: number | null;
      /** board of one carton, square micrometres */
      readonly boardEachUm2: number;
    }
  | { readonly kind: "giveAway"; readonly cartons: number }
  | { readonly kind: "stopBuying"; readonly reason: "sits" | "moreThanPays" };

const MOST_OUTERS = 3;

/**
 * What can be done with a carton that sits, use before waste, each only where it makes sense:
 * cut down where past parcels need less height; an inner box where it is damaged or may not be sent in, and another carton
 * goes round it; pads where it is damaged, or nothing fitted it in a year and it does not pay to keep; given away in that
 * last case if it is sound; and not bought again where it sits or there is more than pays, unless it was saved.
 *
 * @param question the carton, whether it is damaged, what fits it, and what it pays to keep
 * @returns ways in that order, none where the carton is best left alone
 * @throws RangeError if a size is not above zero or the gap below it
 * @see common practice, no source; keepFigure for what pays
 * @example letGoWays({ ...question, isDamaged: true }).map(({ kind }) => kind) // ["innerBox", "pads"]
 */
export function letGoWays(question: LetGoQuestion): readonly LetGoWay[] {
  return [cutDownWay, innerBoxWay, padsWay, giveAwayWay, stopBuyingWay].flatMap((way) => way(question));
}

type Way = (question: LetGoQuestion) => readonly LetGoWay[];

const cutDownWay: Way = ({ carton, isDamaged, heights }) =>
  heights.length === 0 || isDamaged || !maySend(carton) ? [] : [{ kind: "cutDown", heights }];

const innerBoxWay: Way = ({ carton, isDamaged, others, gapUm }) => {
  if (!isDamaged && maySend(carton)) return [];
  const inner = { inside: carton.inside, boardUm: carton.boardUm };
  const outerIds = others
    .filter(({ id }) => id !== carton.id)
    .filter(({ inside }) => boxInBox(inner, inside, { gapUm, thisSideUp: false }).kind === "fits")
    .toSorted((a, b) => blockVolume(a.inside) - blockVolume(b.inside))
    .map(({ id }) => id);
  const reason = isDamaged ? "damaged" : "notForSending";
  return outerIds.length === 0
    ? []
    : [{ kind: "innerBox", reason, outerIds: outerIds.slice(0, MOST_OUTERS) }];
};

const padsWay: Way = ({ carton, isDamaged, fitting, figure }) => {
  const boardEachUm2 = cartonBlank(carton.inside);
  const cartons = cartonStock(carton.onHand) === "countFirst" ? null : carton.onHand;
  if (isDamaged) return [{ kind: "pads", reason: "damaged", cartons, boardEachUm2 }];
  return figure.kind === "letGo" && fitting === 0
    ? [{ kind: "pads", reason: "nothingFits", cartons: figure.letGo, boardEachUm2 }]
    : [];
};

const giveAwayWay: Way = ({ isDamaged, fitting, figure }) =>
  figure.kind === "letGo" && fitting === 0 && !isDamaged ? [{ kind: "giveAway", cartons: figure.letGo }] : [];

const stopBuyingWay: Way = ({ carton, figure }) => {
  if (carton.isSaved) return [];
  if (carton.ageing === "sits") return [{ kind: "stopBuying", reason: "sits" }];
  return figure.kind === "letGo" && figure.reason === "moreThanPays"
    ? [{ kind: "stopBuying", reason: "moreThanPays" }]
    : [];
};

/** Whether a carton may be the outer one of fragile goods at all. */
function maySend({ rating }: CandidateCarton): boolean {
  return certificateLimit(rating).kind === "limit" && postalLimit(rating, "difficult").kind === "limit";
}
