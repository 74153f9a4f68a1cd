import Link from "next/link";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { cardEvidence } from "#prisma/records/card-evidence";
import { Section } from "../../_parts/section";
import { proposalTitle } from "../../recipes/reality/proposal-words";

const MOST_SAID = 2;

/** That the counts speak against a card; nothing while no proposal is open. */
export async function CardsOff({ db, today }: { readonly db: Database; readonly today: Day }) {
  const { supplies, steps } = await cardEvidence(db, today);
  const titles = supplies.flatMap(({ supply, proposals }) =>
    proposals.map((proposal) => proposalTitle({ supply, proposal, steps })),
  );
  if (titles.length === 0) return null;
  const more = titles.length - MOST_SAID;
  return (
    <Section
      title={titles.length === 1 ? "The counts say that a card is off" : "The counts say that cards are off"}
    >
      {titles.slice(0, MOST_SAID).map((title) => (
        <p key={title}>{title}.</p>
      ))}
      <p>
        <Link href="/recipes/reality">
          {more > 0 ? `See these and ${more} more, and answer` : "See why, and answer"}
        </Link>
      </p>
    </Section>
  );
}
