import type { CandidateCarton } from "#lib/cartons/choice/candidate-carton";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import { carriedLoad } from "#lib/cartons/choice/held-load";
import type { CartonCost } from "#lib/cartons/cost/carton-cost";
import { type CartonFit, cartonFit } from "#lib/cartons/fit/carton-fit";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import { fitKey, type PastParcel } from "#lib/cartons/idle/past-parcel";
import { type SuitedType, suitedTypes } from "#lib/cartons/idle/suited-types";
import type { TrustedBoard } from "#lib/cartons/strength/trusted-board";

/** A carton that sits, and recent parcels. */
export type IdleQuestion = {
  readonly carton: CandidateCarton;
  readonly parcels: readonly PastParcel[];
  readonly trust: TrustedBoard;
  readonly effort: FitEffort;
};

/** What a parcel would save, in 1/10,000 minor unit; below zero where it would cost more. */
export type IdleSaving = {
  /** the idle carton's price counted */
  readonly savesValue: number;
  /** its price taken as spent */
  readonly savesAsSpentValue: number;
};

/** A parcel that could have gone in the idle carton. */
export type CouldHaveGone = IdleSaving & {
  readonly parcelId: string;
  readonly itemTypeId: string;
  /** in the idle carton, at today's prices */
  readonly cost: CartonCost;
  /** whether postage is in the saving: it is known for both, then and today */
  readonly hasPostage: boolean;
};

export type IdleSum = IdleSaving & { readonly parcels: number; readonly withoutPostage: number };

/** What could have gone in a carton that sits. */
export type IdleUse = {
  /** best saving first, the price taken as spent */
  readonly parcels: readonly CouldHaveGone[];
  readonly all: IdleSum;
  /** only as many as there are cartons, and only those that save something; null where never counted */
  readonly withinStock: IdleSum | null;
  readonly itemTypes: readonly SuitedType[];
  /** parcels that went in it, and those that could not: too large, not proven to fit, or not carried */
  readonly wentInIt: number;
  readonly doNotFit: number;
  readonly notProven: number;
  readonly notCarried: number;
};

type Answer =
  | { readonly kind: "could"; readonly parcel: CouldHaveGone }
  | { readonly kind: "doNotFit" | "notProven" | "notCarried" };

/**
 * Which recent parcels a carton that sits could have taken, with the clearance that each was packed with, and what each
 * would cost in it today against what it cost then. Prices that have moved since are in the difference.
 *
 * @param question carton, parcels, trust in the board, and how hard to look
 * @returns the parcels with what each would save, sums, and the item types that suit the carton
 * @throws RangeError as `cartonCost`, `cartonFit` and `outerCarton`
 * @example couldHaveGone({ carton: cube10, parcels, trust: USUAL_TRUST, effort: QUICK_EFFORT }).all.parcels // 4
 */
export function couldHaveGone(question: IdleQuestion): IdleUse {
  const { carton, parcels } = question;
  const others = parcels.filter(({ cartonId }) => cartonId !== carton.id);
  const fits = new Map<string, CartonFit>();
  const answers = others.map((parcel) => answer(question, parcel, fits));
  const could = answers
    .flatMap((each) => (each.kind === "could" ? [each.parcel] : []))
    .toSorted((a, b) => b.savesAsSpentValue - a.savesAsSpentValue);
  const count = (kind: Answer["kind"]): number => answers.filter((each) => each.kind === kind).length;
  const { onHand } = carton;
  const saving = could.filter(({ savesAsSpentValue }) => savesAsSpentValue > 0);
  return {
    parcels: could,
    all: sumOf(could),
    withinStock: onHand === null ? null : sumOf(saving.slice(0, Math.max(0, onHand))),
    itemTypes: suitedTypes(others, new Set(could.map(({ parcelId }) => parcelId))),
    wentInIt: parcels.length - others.length,
    doNotFit: count("doNotFit"),
    notProven: count("notProven"),
    notCarried: count("notCarried"),
  };
}

function answer(
  { carton, trust, effort }: IdleQuestion,
  parcel: PastParcel,
  fits: Map<string, CartonFit>,
): Answer {
  const cost = costInCarton(parcel.load, carton, parcel.terms);
  if (cost === null) return { kind: "doNotFit" };
  const key = fitKey(parcel);
  const { clearance } = parcel;
  const fit =
    fits.get(key) ?? cartonFit({ pieces: parcel.load.pieces, inside: carton.inside, clearance }, effort);
  fits.set(key, fit);
  if (fit.kind !== "fits") return { kind: fit.kind === "not-proven" ? "notProven" : "doNotFit" };
  if (carriedLoad(carton, cost, { type: parcel.loadType, trust }).kind !== "carries") {
    return { kind: "notCarried" };
  }
  const hasPostage = cost.postageValue !== null && parcel.paid.postageValue !== null;
  const postageValue = hasPostage ? (parcel.paid.postageValue ?? 0) - (cost.postageValue ?? 0) : 0;
  const materialsValue = cost.totalValue - (cost.postageValue ?? 0);
  const savesValue = parcel.paid.materialsValue - materialsValue + postageValue;
  const savesAsSpentValue = savesValue + carton.value;
  return {
    kind: "could",
    parcel: {
      ...{ parcelId: parcel.id, itemTypeId: parcel.itemTypeId },
      ...{ cost, hasPostage, savesValue, savesAsSpentValue },
    },
  };
}

function sumOf(parcels: readonly CouldHaveGone[]): IdleSum {
  const sum = (value: (parcel: CouldHaveGone) => number): number =>
    parcels.reduce((all, parcel) => all + value(parcel), 0);
  return {
    parcels: parcels.length,
    savesValue: sum(({ savesValue }) => savesValue),
    savesAsSpentValue: sum(({ savesAsSpentValue }) => savesAsSpentValue),
    withoutPostage: parcels.filter(({ hasPostage }) => !hasPostage).length,
  };
}
