import { z } from "zod";
import { type Amount, amount } from "#lib/units/amount";
import type { CardEvidence, SupplyEvidence } from "#prisma/records/card-evidence";
import { ANSWERS } from "#prisma/records/recipe-answers";

/** The button that was pressed. */
export const answerForm = z.object({ answer: z.enum(ANSWERS, "Press one of the buttons.") });

/** What was asked, as the screen showed it. The id is made by the screen: sent twice it is one answer. */
export const askedForm = z.object({
  id: z.uuid(),
  supplyId: z.string().min(1).max(120),
  stepKeys: z.array(z.string().min(1).max(120)).min(1).max(40),
  about: z.number().int().nonnegative().transform(amount),
});

export type Asked = z.input<typeof askedForm>;

/** What was asked, found again among what the counts propose now. */
export type FoundProposal = {
  readonly of: SupplyEvidence;
  readonly proposal: SupplyEvidence["proposals"][number];
};

/**
 * The proposal that was shown, if the counts still make it.
 *
 * @param evidence of the counts as they stand now
 * @param asked what the screen showed
 * @returns null where the counts, the card or an answer changed it since
 * @example foundProposal(evidence, { supplyId: "paper", stepKeys: ["mug/fill"], about: amountOfUnits(13) })
 */
export function foundProposal(
  { supplies }: Pick<CardEvidence, "supplies">,
  asked: { readonly supplyId: string; readonly stepKeys: readonly string[]; readonly about: Amount },
): FoundProposal | null {
  const of = supplies.find(({ supply }) => supply.id === asked.supplyId);
  const proposal = of?.proposals.find(
    ({ stepKeys, usesAbout }) =>
      usesAbout === asked.about &&
      stepKeys.length === asked.stepKeys.length &&
      stepKeys.every((key) => asked.stepKeys.includes(key)),
  );
  return of === undefined || proposal === undefined ? null : { of, proposal };
}
