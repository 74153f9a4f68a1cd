import { betteredBy } from "#lib/cushioning/purchase/bettered-by";
import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { choiceOfMix } from "#lib/cushioning/purchase/choice-of-mix";
import { dearerOffers } from "#lib/cushioning/purchase/dearer-offers";
import { type MixChange, mixChange } from "#lib/cushioning/purchase/mix-change";
import { type MixPlans, mixPlans } from "#lib/cushioning/purchase/mix-plan";
import { mixProof } from "#lib/cushioning/purchase/mix-proof";
import type { MixOffer, MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { offerToProbe } from "#lib/cushioning/purchase/offer-to-probe";
import { soldOut } from "#lib/cushioning/purchase/sold-out";
import { type MixPlan, type MixStart, solvedMix } from "#lib/cushioning/purchase/solved-mix";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";

/** What one more pack of an offer would be worth, were it on hand for nothing. */
export type AnotherPack = {
  readonly offerId: string;
  readonly supplyId: string;
  /** use units of the pack */
  readonly units: number;
  /**
   * by how much the plan's total falls with it, minor units; in part the worth of what is then left over. Where it lets
   * more be packed or kept (`change.moreUndone` below 0), the total may rise for that. Where room is short, a pack that
   * nobody asked for may be in the way.
   */
  readonly worthMinor: number;
  readonly change: MixChange;
};

/** The plans, and what becomes of the mixed one when its supplies change. */
export type MixStudy = MixPlans & {
  /** for each supply that was asked about and has an offer */
  readonly anotherPacks: readonly AnotherPack[];
  /** all offers of those supplies dearer; null where they have none */
  readonly dearer: MixChange | null;
  /** none of those supplies to be had; null where they have no offer that is not sold out already */
  readonly soldOut: MixChange | null;
};

/** What the study asks about. */
export type StudyMeans = PlanMeans & {
  /** the supplies that may be scarce or dearer, such as those of bubble */
  readonly supplyIds: readonly string[];
  /** share by which they get dearer, such as 0.2 */
  readonly dearerShare: number;
};

/**
 * The mixed plan against all paper and all bubble, and how it answers to its supplies: what another pack of them would
 * be worth, what it does when they get dearer, or when they are sold out. Dearer goods may reach free delivery or a least
 * order with fewer packs; apart from that a dearer supply never makes the plan cheaper, beyond what is not proven of both.
 *
 * @param asked all of the mix
 * @param means solver, gap, clock; the time is that of `mixPlans`, as much again for each change, and once more for the mixed plan
 * @returns plans and changes
 * @throws RangeError for a question that makes no sense, or a supply that it does not have
 */
export async function mixStudy(asked: MixQuestion, means: StudyMeans): Promise<MixStudy> {
  // Checked once: what a unit left over is worth must not move with the prices.
  const { question } = checkedMix(asked);
  const unknown = means.supplyIds.find((id) => question.supplies.every((supply) => supply.id !== id));
  if (unknown !== undefined)
    throw new RangeError(`mixStudy requires supplies of the question, got ${unknown}`);
  const plans = await mixPlans(asked, means);
  const asks = changesOf(question, plans.mixed, means);
  const found: { readonly ask: Ask; readonly plan: MixPlan }[] = [];
  for (const ask of asks) {
    found.push({ ask, plan: await solvedMix(ask.question, means, [startOf(plans.mixed)]) });
  }
  // Each question takes the best of all that was found, so that the differences tell of the change alone.
  const pool = found.flatMap(({ ask, plan }) => [startOf(plan), ...withPack(ask, plan)]);
  const mixed = await solvedAgain(question, betteredBy(question, plans.mixed, pool, means.gap), means);
  const changes = found.map(({ ask, plan }) => {
    const best = betteredBy(ask.question, plan, [startOf(mixed), ...pool], means.gap);
    return { ask, change: mixChange(ask.question, mixed, best) };
  });
  const changeOf = (kind: "dearer" | "sold-out") =>
    changes.find(({ ask }) => ask.kind === kind)?.change ?? null;
  return {
    ...plans,
    mixed,
    anotherPacks: changes.flatMap(({ ask, change }): AnotherPack[] => {
      if (ask.kind !== "another-pack") return [];
      const { id, supplyId, unitsPerPack } = ask.offer;
      return [{ offerId: id, supplyId, units: unitsPerPack, worthMinor: 0 - change.moreMinor, change }];
    }),
    dearer: changeOf("dearer"),
    soldOut: changeOf("sold-out"),
  };
}

/** All differences are told from the mixed plan, so that it gets the time once more where it is not proven. */
async function solvedAgain(question: MixQuestion, plan: MixPlan, means: StudyMeans): Promise<MixPlan> {
  if (plan.proof.proven || means.seconds <= 0) return plan;
  const again = await solvedMix(question, means, [startOf(plan)]);
  const bounds = [plan, again].map((each) => each.proof.boundMinor ?? Number.NEGATIVE_INFINITY);
  const proof = mixProof(again.costs, {
    bound: Math.max(...bounds),
    leastUndone: plan.proof.leastUndone || again.proof.leastUndone,
    gapAsked: means.gap,
    seconds: plan.proof.seconds + again.proof.seconds,
  });
  return { ...again, proof };
}

type Ask =
  | { readonly kind: "dearer" | "sold-out"; readonly question: MixQuestion }
  | { readonly kind: "another-pack"; readonly question: MixQuestion; readonly offer: MixOffer };

function changesOf(question: MixQuestion, mixed: MixPlan, { supplyIds, dearerShare }: StudyMeans): Ask[] {
  const offers = question.offers.filter(({ supplyId }) => supplyIds.includes(supplyId));
  const packs = supplyIds.flatMap((supplyId): Ask[] => {
    const offer = offerToProbe(question, mixed, supplyId);
    if (offer === null) return [];
    const supplies = question.supplies.map((supply) =>
      supply.id === supplyId ? { ...supply, onHand: supply.onHand + offer.unitsPerPack } : supply,
    );
    return [{ kind: "another-pack", question: { ...question, supplies }, offer }];
  });
  const isSold = offers.some(({ mostPacks }) => mostPacks !== 0);
  return [
    ...packs,
    ...(offers.length > 0
      ? [{ kind: "dearer" as const, question: dearerOffers(question, supplyIds, dearerShare) }]
      : []),
    ...(isSold ? [{ kind: "sold-out" as const, question: soldOut(question, supplyIds) }] : []),
  ];
}

const startOf = (plan: MixPlan): MixStart => ({ choice: choiceOfMix(plan), from: plan.from });

/** The plan for one pack more on hand, with that pack bought: what the pack is worth is then at most what it costs. */
function withPack(ask: Ask, plan: MixPlan): MixStart[] {
  if (ask.kind !== "another-pack") return [];
  const { lines, split } = choiceOfMix(plan);
  const offerId = ask.offer.id;
  const packs = (lines.find((line) => line.offerId === offerId)?.packs ?? 0) + 1;
  if (packs < (ask.offer.steps?.[0]?.fromPacks ?? 1)) return [];
  const others = lines.filter((line) => line.offerId !== offerId);
  return [{ choice: { lines: [...others, { offerId, packs }], split }, from: plan.from }];
}
