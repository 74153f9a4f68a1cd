import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "../_parts/button-link";
import { FollowsRecords } from "../_parts/follows-records";
import { Page } from "../_parts/page";
import { RecordForm } from "../_parts/record-form";
import { Section } from "../_parts/section";
import { shopNow } from "../_parts/shop-now";
import { CartonFigures } from "./_parts/carton-figures";
import styles from "./_parts/cartons.module.css";
import { CouldHaveGone } from "./_parts/could-have-gone";
import { keepCartonSettings } from "./actions";
import { AGEING_WORDS } from "./ageing-words";
import { cartonsFinding } from "./cartons-finding";
import { readCartonShelf } from "./read-carton-shelf";
import { readRecentParcels } from "./read-recent-parcels";
import { cartonSettingsFields } from "./settings-fields";
import { sittingCartons } from "./sitting-cartons";

export const metadata: Metadata = { title: "Cartons" };

/** Which sizes move, which sit, and what could go into those? */
export default async function CartonsPage() {
  const now = await shopNow();
  const shelf = await readCartonShelf(now);
  const recent = await readRecentParcels(now, shelf);
  const { cartons, unsized, settings } = shelf;
  const sitting = sittingCartons(cartons, recent.parcels, shelf.habits.boxGapUm, now.shop.measures);
  const notKnown = shelf.terms?.notKnown ?? [];
  const { slow, sits } = settings.ageing;
  return (
    <Page
      finding={cartonsFinding(cartons, now.shop)}
      aside={`Slow: not used for ${slow.silentWeeks} open weeks, or enough for ${slow.coverMonths} months. Sits: ${sits.silentWeeks} weeks, or ${sits.coverMonths} months. A convention; set your own below.`}
      actions={
        <>
          <ButtonLink href="/cartons/fit" tone="primary">
            Find a carton
          </ButtonLink>
          <ButtonLink href="/cartons/range">Which sizes to keep</ButtonLink>
          <ButtonLink href="/supplies/new">Add a carton</ButtonLink>
        </>
      }
    >
      <FollowsRecords version={now.version} />
      {cartons.length === 0 ? null : (
        <Section title="The sizes, to scale">
          <CartonFigures cartons={cartons} />
        </Section>
      )}
      {notKnown.length === 0 ? null : (
        <p>Not written down, so counted as nothing below: {notKnown.join(", ")}.</p>
      )}
      {sitting.length === 0 ? null : (
        <Section
          title="What sits or is slow, and what could go into it"
          rule="strong"
          aside={sitting.length === 1 ? undefined : "In the order in which to use them up."}
        >
          {sitting.map(({ carton, answer }) => (
            <section key={carton.id} aria-label={carton.name} className={styles.sitting}>
              <h3>
                <Link href={`/cartons/${encodeURIComponent(carton.id)}`}>{carton.name}</Link>{" "}
                {AGEING_WORDS[carton.idle.ageing]}
              </h3>
              <CouldHaveGone carton={carton} answer={answer} shelf={shelf} recent={recent} now={now} />
            </section>
          ))}
        </Section>
      )}
      {unsized.length === 0 ? null : (
        <p>
          Not drawn, as their inside sizes are not written down:{" "}
          {unsized.map(({ id, name }, at) => (
            <span key={id}>
              {at === 0 ? "" : ", "}
              <Link href={`/supplies/${id}/edit`}>{name}</Link>
            </span>
          ))}
          .
        </p>
      )}
      <Section title="How you judge your cartons" id="settings">
        <RecordForm
          action={keepCartonSettings}
          label="How you judge your cartons"
          layout="line"
          fields={cartonSettingsFields(settings, now.shop)}
          submit="Save"
        />
      </Section>
    </Page>
  );
}
