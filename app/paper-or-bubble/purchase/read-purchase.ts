import { createHash } from "node:crypto";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { type MixStudy, mixStudy } from "#lib/cushioning/purchase/mix-study";
import { AMOUNT_PER_UNIT, unitsOf } from "#lib/units/amount";
import { rememberedUntilWritten } from "#prisma/records/remembered";
import { type Supplier, suppliersOf } from "#prisma/records/suppliers";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import type { ShopNow } from "../../_parts/shop-now";
import { planSecondsHere } from "../../purchase-plan/plan-seconds";
import { solveInWorker } from "../../solver/solve-in-worker";
import type { CushionAnswer } from "../cushion-answer";
import type { CushionGround } from "../cushion-ground";
import type { WhatIf } from "../what-if";
import { mixQuestionOf } from "./mix-question-of";

/** The next purchase as it was worked out. */
export type Purchase = {
  readonly study: MixStudy;
  readonly suppliers: readonly Supplier[];
  /** supplies that parcels take and that were never counted: left out */
  readonly notCounted: readonly string[];
};

/** Closer to the cheapest than this nobody looks. */
const GAP = 0.003;
/** "What happens if it gets 20 % dearer?" */
const DEARER_SHARE = 0.2;
/** Studies kept in memory: going back and forth between prices costs nothing. */
const MOST_KEPT = 12;

// Next may keep a copy of this module for each screen; what was worked out is one for all.
const KEY = Symbol.for("wadding.purchase-studies");
const held = globalThis as unknown as { [KEY]?: Map<string, Promise<MixStudy>> };
const studies: Map<string, Promise<MixStudy>> = held[KEY] ?? new Map();
held[KEY] = studies;

/**
 * The next purchase: which packs, and which parcels in which style, against all on paper and all on bubble. The models
 * are solved in a thread of their own; what was worked out for the same question is kept.
 *
 * @param now the open database, the shop and its day
 * @param ground as the shop stands
 * @param answer the comparison with its prices and card
 * @param whatIf prices that are tried out
 * @returns null where no counted supply is taken by anything that is sent
 */
export async function readPurchase(
  now: ShopNow,
  ground: CushionGround,
  answer: CushionAnswer,
  whatIf: WhatIf,
): Promise<Purchase | null> {
  const { db, shop, today } = now;
  const [check, suppliers] = await Promise.all([
    rememberedUntilWritten(db, JSON.stringify(["paper-or-bubble check", today]), () =>
      weeklyCheckOn(db, today),
    ),
    suppliersOf(db),
  ]);
  const rows = check?.rows ?? [];
  const kinds = [...answer.kinds, ...answer.untold, ...answer.single];
  const question = mixQuestionOf({
    weeks: ground.weeks,
    longestCoverWeeks: shop.longestCoverWeeks,
    kinds,
    onHand: new Map(
      rows.flatMap(({ supplyId, onHand, onOrder }) =>
        onHand === null ? [] : [[supplyId, unitsOf(onHand) + unitsOf(onOrder)] as const],
      ),
    ),
    keep: new Map(rows.map(({ supplyId, safetyStock }) => [supplyId, (safetyStock ?? 0) / AMOUNT_PER_UNIT])),
    prices: answer.terms.replacement,
    tried: whatIf.prices,
    priceNow: ground.replacement,
    litres: ground.litres,
    offers: ground.offers,
    suppliers,
    holdingPerMille: shop.holdingPerMille,
    cashMinor: shop.weekLimitMinor,
    litresAtHome: shop.roomMl === null ? null : shop.roomMl / ML_PER_LITRE,
  });
  if (question.supplies.length === 0 || question.types.length === 0) return null;
  const planned = new Set(question.supplies.map(({ id }) => id));
  const taken = new Set(kinds.flatMap(({ costs }) => costs.flatMap(({ way }) => [...way.takes.keys()])));
  const bubble = ground.supplies.filter(({ id, kind }) => kind === "bubble" && planned.has(id));
  return {
    study: await studyOf(
      question,
      bubble.map(({ id }) => id),
    ),
    suppliers,
    notCounted: [...taken].filter((id) => !planned.has(id)),
  };
}

const ML_PER_LITRE = 1_000;

async function studyOf(question: MixQuestion, supplyIds: readonly string[]): Promise<MixStudy> {
  const key = createHash("sha256")
    .update(JSON.stringify([question, supplyIds]))
    .digest("hex");
  const before = studies.get(key);
  studies.delete(key);
  const study =
    before ??
    mixStudy(question, {
      solve: solveInWorker,
      seconds: planSecondsHere(),
      gap: GAP,
      now: () => performance.now() / 1_000,
      supplyIds,
      dearerShare: DEARER_SHARE,
    });
  studies.set(key, study);
  for (const oldest of [...studies.keys()].slice(0, -MOST_KEPT)) studies.delete(oldest);
  try {
    return await study;
  } catch (error) {
    // Asked for again, it is tried again.
    if (studies.get(key) === study) studies.delete(key);
    throw error;
  }
}
