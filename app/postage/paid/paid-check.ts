import { massAsStored } from "#lib/postage/exact-mass";
import { neighbourSteps } from "#lib/postage/neighbour-steps";
import { type NotTold, type PaidVerdict, paidVerdict } from "#lib/postage/paid-verdict";
import type { RateCard } from "#lib/postage/rate-card";
import { stepWords } from "#lib/postage/step-words";
import { day } from "#lib/units/day";
import { milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import type { PaidRow } from "#prisma/records/paid-parcels";
import { type OutsideGround, outsideSize } from "../outside-size";

/** A parcel with what was made of its payment. */
export type CheckedParcel = { readonly row: PaidRow; readonly verdict: PaidVerdict };

/** A parcel that was over a step by a little. */
export type MissedStep = {
  readonly row: PaidRow;
  readonly overMg: number;
  /** what the step below would have saved, minor units */
  readonly minor: number;
};

/** What the payments of a span came to. */
export type PaidCheck = {
  /** the dearest first */
  readonly over: readonly CheckedParcel[];
  readonly overMinor: number;
  readonly under: readonly CheckedParcel[];
  readonly underMinor: number;
  readonly agrees: number;
  readonly notTold: ReadonlyMap<NotTold, number>;
  readonly missed: readonly MissedStep[];
  readonly missedMinor: number;
};

/** A little over a step: what a lighter carton or a sheet less could save. A convention. */
export const MISSED_BY_MG: Readonly<Record<Measures, number>> = { imperial: 28_350, metric: 30_000 };

type CheckGround = OutsideGround & {
  /** cards of all services and days, their zones ids */
  readonly cards: readonly RateCard[];
  /** the main service first */
  readonly services: readonly string[];
  readonly measures: Measures;
};

/**
 * Holds what was paid for parcels against the cards of their days.
 *
 * @param rows parcels with their postage
 * @param ground cards, cartons, measures
 */
export function paidCheck(rows: readonly PaidRow[], ground: CheckGround): PaidCheck {
  const checked = rows.map((row): CheckedParcel => ({ row, verdict: verdictOf(row, ground) }));
  const worst = (kind: "over" | "under") =>
    checked.filter(({ verdict }) => verdict.kind === kind).toSorted((a, b) => byOf(b) - byOf(a));
  const [over, under] = [worst("over"), worst("under")];
  const notTold = new Map<NotTold, number>();
  for (const { verdict } of checked) {
    if (verdict.kind === "notTold") notTold.set(verdict.why, (notTold.get(verdict.why) ?? 0) + 1);
  }
  const missed = checked
    .flatMap(({ row, verdict }) => missedStep(row, verdict, MISSED_BY_MG[ground.measures]))
    .toSorted((a, b) => b.minor - a.minor);
  const sum = (values: readonly number[]) => values.reduce((all, each) => all + each, 0);
  return {
    over,
    overMinor: sum(over.map(byOf)),
    under,
    underMinor: sum(under.map(byOf)),
    agrees: checked.filter(({ verdict }) => verdict.kind === "agrees").length,
    notTold,
    missed,
    missedMinor: sum(missed.map(({ minor }) => minor)),
  };
}

function byOf({ verdict }: CheckedParcel): number {
  return verdict.kind === "over" || verdict.kind === "under" ? verdict.byMinor : 0;
}

function verdictOf(row: PaidRow, ground: CheckGround): PaidVerdict {
  const { scaleMg, scaleTyped } = row;
  const shown = scaleTyped === null ? { measures: ground.measures } : { typed: scaleTyped };
  return paidVerdict(
    {
      paidMinor: row.postageMinor,
      shipDay: day(row.postedOn ?? row.packedOn),
      zone: row.zoneId,
      weight: scaleMg === null ? null : massAsStored(milligrams(scaleMg), shown),
      size: outsideSize(row.carton, ground),
    },
    ground.cards,
    ground.services,
  );
}

/** By its card, whatever was paid: an overcharge stands among the overcharges. */
function missedStep(row: PaidRow, verdict: PaidVerdict, mostMg: number): MissedStep[] {
  if (verdict.kind === "notTold") return [];
  const { cheaper } = neighbourSteps(verdict.question);
  return cheaper === null || cheaper.mg > mostMg
    ? []
    : [{ row, overMg: cheaper.mg, minor: cheaper.savedMinor }];
}

/** Half an ounce, as far as a scale that reads whole ounces may be off. */
const AT_LIMIT_MG = 14_175;

/**
 * The likely reason of a payment, in words.
 *
 * @param verdict of a parcel that cost more or less than its card says
 * @param zoneName name of a zone
 */
export function reasonWords(
  { reason, question }: PaidVerdict & { readonly kind: "over" | "under" },
  zoneName: (id: string) => string,
): string {
  if (reason === null) return "Nothing on the card explains it.";
  switch (reason.kind) {
    case "step": {
      const count = Math.abs(reason.stepsUp);
      const which = reason.stepsUp > 0 ? "heavier" : "lighter";
      const words = `As for ${stepWords(reason.step)}: ${count === 1 ? "one step" : `${count} steps`} ${which}.`;
      const { next } = neighbourSteps(question);
      const isAtLimit = reason.stepsUp === 1 && next !== null && next.mg < AT_LIMIT_MG;
      return isAtLimit ? `${words} It stood at the limit: a finer scale may read more.` : words;
    }
    case "zone":
      return `As for zone ${zoneName(reason.zone)}.`;
    case "sizeCounted":
      return "As with the size rule, though it is not over its floor.";
    case "sizeLeftOut":
      return "As without the rule and the fees for size.";
  }
}

/** Why payments can't be held against a card, and the way out. */
export const NOT_TOLD_WORDS: Readonly<Record<NotTold, string>> = {
  noWeight: "were not weighed: read the scale into Pack",
  noZone: "have no zone: choose it at Pack or correct the parcel",
  noCard: "were sent on a day without a card: add the card of that day",
  zoneOffCard: "went to a zone that the card of that day does not have",
  noSize: "went in a carton without sizes, and the card counts size: write the sizes down under Supplies",
  notCarried: "would not be carried by the card, or it has no price for them",
};
