import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { ButtonLink } from "../../_parts/button-link";
import { FollowsRecords } from "../../_parts/follows-records";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { CartonOutline, outlineReach } from "../_parts/carton-outline";
import styles from "../_parts/cartons.module.css";
import { CouldHaveGone } from "../_parts/could-have-gone";
import { UseBars } from "../_parts/use-bars";
import { UseFirst } from "../_parts/use-first";
import { AGEING_WORDS } from "../ageing-words";
import { cartonFacts } from "../carton-facts";
import { idleAnswer } from "../idle-use";
import { readCartonShelf } from "../read-carton-shelf";
import { readRecentParcels } from "../read-recent-parcels";
import { usualGrossMg } from "../usual-gross";

export const metadata: Metadata = { title: "A carton" };

type CartonPageProps = { readonly params: Promise<{ readonly id: string }> };

/** One size of carton: what it holds and bears, how it moves, and what could go into it. */
export default async function CartonPage({ params }: CartonPageProps) {
  const now = await shopNow();
  const { id } = await params;
  const shelf = await readCartonShelf(now);
  const carton = shelf.cartons.find((each) => each.id === decodeURIComponent(id));
  if (carton === undefined) notFound();
  const { name, supply, inside, months, idle } = carton;
  const recent = await readRecentParcels(now, shelf);
  const { measures } = now.shop;
  const answer = idleAnswer(carton, shelf.cartons, recent.parcels, shelf.habits.boxGapUm, measures);
  return (
    <Page
      width="narrow"
      finding={`${name} ${finding(idle.ageing)}`}
      aside="Estimates: nothing here certifies that a package protects its contents. Send a test parcel, and mind the carrier's own rules."
      actions={
        <>
          <ButtonLink href={`/supplies/count#${id}`}>Count it</ButtonLink>
          <ButtonLink href={`/supplies/${id}`}>Its ledger</ButtonLink>
          <ButtonLink href={`/supplies/${id}/edit`}>Sizes and rating</ButtonLink>
        </>
      }
    >
      <FollowsRecords version={now.version} />
      <div className={styles.portrait}>
        <CartonOutline
          block={inside}
          frame={outlineReach(inside)}
          label={`${name}, drawn to its proportions`}
        />
        <div>
          <UseBars
            months={months}
            most={Math.max(1, ...months.map((used) => used ?? 0))}
            label={`${Math.round(idle.use.in365Days)} used in the last year, month by month`}
          />
          <p className={styles.small}>Use in the last twelve months, the latest on the right.</p>
        </div>
      </div>
      <dl className={styles.facts}>
        {cartonFacts(carton, now.shop, usualGrossMg(carton, shelf)).map((fact) => (
          <div key={fact.name} className={styles.fact}>
            <dt>{fact.name}</dt>
            <dd>{fact.words}</dd>
          </div>
        ))}
      </dl>
      <UseFirst cartonId={carton.id} name={name} isFirst={supply.useFirst} />
      <Section title="What could have gone in it" id="could-have-gone">
        <CouldHaveGone carton={carton} answer={answer} shelf={shelf} recent={recent} now={now} />
      </Section>
      <p>
        <Link href="/cartons">All the cartons</Link>
      </p>
    </Page>
  );
}

function finding(ageing: keyof typeof AGEING_WORDS): string {
  return ageing === "tooNew"
    ? "is new on the shelf."
    : `${ageing === "slow" ? "is slow" : AGEING_WORDS[ageing]}.`;
}
