import type { Supply } from "#prisma/records/supplies";
import type { ShopNow } from "../_parts/shop-now";
import { draftQuery } from "../recipes/[id]/draft/draft-choice";
import { type CushionAnswer, cushionAnswer } from "./cushion-answer";
import type { CushionGround } from "./cushion-ground";
import { readCushionGround } from "./read-cushion-ground";
import { triedSupplies } from "./tried-supplies";
import { type AskedWhatIf, askedWhatIf, priceText } from "./what-if";

/** What the screens of paper and bubble start from. */
export type Compared = {
  readonly ground: CushionGround;
  readonly query: Readonly<Record<string, string>>;
  readonly asked: AskedWhatIf;
  readonly answer: CushionAnswer;
  /** supplies whose price may turn the choice */
  readonly tried: readonly Supply[];
  /** a supply's price as its field shows it; empty where none is known */
  readonly shownNow: (supplyId: string) => string;
};

const AS_IT_IS = { prices: new Map<string, number>(), cardId: null };

/**
 * Reads the shop and what the address tries out, and compares.
 *
 * @param now the open database, the shop and its day
 * @param params fields of the address
 */
export async function readCompared(
  now: ShopNow,
  params: Readonly<Record<string, string | string[] | undefined>>,
): Promise<Compared> {
  const ground = await readCushionGround(now);
  const { minorDigits } = now.shop;
  const query = draftQuery(params);
  const asItIs = cushionAnswer(ground, AS_IT_IS);
  const tried = triedSupplies(asItIs.kinds, ground.supplies);
  const shownNow = (supplyId: string): string => {
    const value = ground.replacement.get(supplyId) ?? null;
    return value === null ? "" : priceText(value, minorDigits);
  };
  const asked = askedWhatIf(query, {
    supplyIds: tried.map(({ id }) => id),
    cardIds: ground.cards.map(({ id }) => id),
    minorDigits,
    shownNow,
  });
  const isAsItIs = asked.whatIf.prices.size === 0 && asked.whatIf.cardId === null;
  return {
    ground,
    query,
    asked,
    answer: isAsItIs ? asItIs : cushionAnswer(ground, asked.whatIf),
    tried,
    shownNow,
  };
}
