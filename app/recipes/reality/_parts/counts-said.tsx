import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { cardEvidence } from "#prisma/records/card-evidence";
import { Message } from "../../../_parts/message";
import { proposalReasons, proposalTitle } from "../proposal-words";

type CountsSaidProps = {
  readonly db: Database;
  readonly today: Day;
  readonly of: { readonly itemTypeId: string; readonly style: CushionStyle };
};

/** What the counts say about one card, above the form that changes it; nothing where they say nothing. */
export async function CountsSaid({ db, today, of }: CountsSaidProps) {
  const { supplies, steps } = await cardEvidence(db, today);
  const said = supplies.flatMap(({ supply, proposals }) =>
    proposals.flatMap((proposal) => {
      const card = steps.get(proposal.stepKeys[0] ?? "")?.recipe;
      const isOfCard = card?.itemTypeId === of.itemTypeId && card.style === of.style;
      return isOfCard ? [{ supply, proposal, steps }] : [];
    }),
  );
  return said.map((each) => (
    <Message key={each.proposal.stepKeys.join(" ")} kind="note" title={`${proposalTitle(each)}.`}>
      {proposalReasons(each).join(" ")}
    </Message>
  ));
}
