import type { Metadata } from "next";
import { cardEvidence } from "#prisma/records/card-evidence";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { ButtonLink } from "../../_parts/button-link";
import { Message } from "../../_parts/message";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { Proposal } from "./_parts/proposal";
import styles from "./_parts/reality.module.css";
import { SupplyReality } from "./_parts/supply-reality";
import { answerLines, type CardOfStep } from "./answer-words";
import { listed } from "./listed";
import { realityFinding } from "./reality-finding";

export const metadata: Metadata = { title: "Card against reality" };

type RealityProps = { readonly searchParams: Promise<{ readonly answered?: string | string[] }> };

/** What the counts say the steps of the cards really take: proposals first, then every counted supply. */
export default async function RealityPage({ searchParams }: RealityProps) {
  const { db, today } = await shopNow();
  const { answered } = await searchParams;
  const [evidence, versions, itemTypes] = await Promise.all([
    cardEvidence(db, today),
    recipesOf(db),
    itemTypesOf(db, { retired: true }),
  ]);
  const { supplies, steps } = evidence;
  const names = new Map(itemTypes.map(({ id, name }) => [id, name]));
  const cardOf: CardOfStep = (stepId) => {
    const of = versions.find((version) => version.steps.some(({ id }) => id === stepId));
    if (of === undefined) return { name: "The card", laterFrom: null };
    const later = versions.find(
      ({ itemTypeId, style, effectiveFrom }) =>
        itemTypeId === of.itemTypeId && style === of.style && effectiveFrom > today,
    );
    return { name: `${names.get(of.itemTypeId)} on ${of.style}`, laterFrom: later?.effectiveFrom ?? null };
  };
  const proposals = supplies.flatMap(({ supply, proposals: own }) =>
    own.map((proposal) => ({ supply, proposal, steps })),
  );
  const answers = answerLines(evidence, today, cardOf);
  const seen = supplies.filter(({ evidence: { total } }) => total !== null);
  const unseen = supplies.filter(({ evidence: { total } }) => total === null);
  const justNow = answers.find(({ id }) => id === answered);
  return (
    <Page
      finding={realityFinding(supplies.length, proposals.length, answers.length)}
      aside="What went between two counts against what the cards say for the parcels packed. An estimate; nothing changes before you say so."
      actions={<ButtonLink href="/supplies/count">Count supplies</ButtonLink>}
    >
      {justNow === undefined ? null : (
        <Message kind="done" title={`${justNow.title}.`}>
          {justNow.words}
        </Message>
      )}
      {proposals.length === 0 ? null : (
        <Section
          title="Change these cards?"
          rule="strong"
          aside="A change holds for what is packed from today on; parcels packed before keep their amounts. More or less material also changes how a piece is protected: send a test parcel."
        >
          <ul className={styles.list}>
            {proposals.map((of) => (
              <Proposal key={of.proposal.stepKeys.join(" ")} {...of} />
            ))}
          </ul>
        </Section>
      )}
      {supplies.length === 0 ? null : (
        <Section
          title="Real use over the cards"
          aside="1.00 is as the cards said when it was packed. The two numbers behind “truly” hold the real one 9 times in 10."
        >
          {seen.length === 0 ? null : (
            <ul className={styles.list}>
              {seen.map((of) => (
                <SupplyReality key={of.supply.id} of={of} steps={steps} />
              ))}
            </ul>
          )}
          {unseen.length === 0 ? null : (
            <p className={styles.small}>
              No step of a card took{" "}
              {listed(
                unseen.map(({ supply }) => supply.name),
                "or",
              )}{" "}
              between the counts, so they say nothing about cards.
            </p>
          )}
        </Section>
      )}
      {answers.length === 0 ? null : (
        <Section title="What you answered">
          <ul className={styles.list}>
            {answers.map(({ id, title, words }) => (
              <li key={id} className={styles.row}>
                <p className={styles.line}>{title}.</p>
                <p className={styles.small}>{words}</p>
              </li>
            ))}
          </ul>
        </Section>
      )}
      <Section title="How it is worked out">
        <p className={styles.small}>
          Counted before, and what came in, less what was booked as spoilt and what was counted after: that
          much went. What the parcels’ own lines say is taken off; the rest is laid on the steps whose cards
          were followed. Lines changed by hand, cartons, stand-ins and unusual parcels count as they were
          written and say nothing about a card.
        </p>
        <p className={styles.small}>
          Guesses: a pile counted by the piece is off by 1 %, by weight 3 %, by height or on the roll 5 %, at
          a glance (“looks right”) 10 %; single uses differ by 30 % of the card; what is half a year old
          counts half. A change is proposed from four counts on, if it is a tenth of the card or more and 98 %
          sure.
        </p>
      </Section>
    </Page>
  );
}
