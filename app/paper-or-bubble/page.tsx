import type { Metadata } from "next";
import { Suspense } from "react";
import { addDays, type Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { unitWord } from "#lib/units/use-unit";
import { brokenByStyle } from "#prisma/records/broken-by-style";
import type { Supply } from "#prisma/records/supplies";
import { ButtonLink } from "../_parts/button-link";
import { FollowsRecords } from "../_parts/follows-records";
import { Page } from "../_parts/page";
import { RecordForm } from "../_parts/record-form";
import { Section } from "../_parts/section";
import { shopNow } from "../_parts/shop-now";
import { KindsTable } from "./_parts/kinds-table";
import { NextPurchase } from "./_parts/next-purchase";
import styles from "./_parts/paper-or-bubble.module.css";
import { PastCosts } from "./_parts/past-costs";
import { TotalsAbove } from "./_parts/totals-above";
import { TurningPrices } from "./_parts/turning-prices";
import { WhatIfForm } from "./_parts/what-if-form";
import { keepCushionSettings } from "./actions";
import { bubbleFirst } from "./bubble-first";
import type { CushionAnswer, KindAnswer } from "./cushion-answer";
import { cushionFinding, isPostageLeftOut } from "./cushion-finding";
import { finePrice } from "./fine-price";
import { kindName } from "./kind-words";
import { leavesOut } from "./leaves-out";
import { readCompared } from "./read-compared";
import { cushionSettingsFields } from "./settings-fields";
import { triedQuery } from "./what-if";

const YEAR_DAYS = 365;

export const metadata: Metadata = { title: "Paper or bubble" };

type CushionPageProps = {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** Which is cheaper for what I send, postage included, and what should I buy? */
export default async function CushionPage({ searchParams }: CushionPageProps) {
  const now = await shopNow();
  const { shop } = now;
  const compared = await readCompared(now, await searchParams);
  const { ground, query, asked, answer, tried, shownNow } = compared;
  const names = new Map(ground.itemTypes.map(({ id, name }) => [id, name]));
  const nameOf = ({ pieces }: Pick<KindAnswer, "pieces">) => kindName(pieces, (id) => names.get(id) ?? id);
  const priced = tried.filter(({ id }) => (answer.terms.replacement.get(id) ?? 0) > 0);
  const [turning, ...alike] = bubbleFirst(priced);
  const turningOf = (supply: Supply) => (
    <TurningPrices
      supply={supply}
      priceNow={answer.terms.replacement.get(supply.id) ?? 0}
      kinds={answer.kinds}
      nameOf={nameOf}
      money={(value) => finePrice(value, shop)}
    />
  );
  const parcels = answer.kinds.reduce((sum, kind) => sum + kind.parcels, 0);
  const tail = triedQuery(query);
  return (
    <Page
      finding={cushionFinding(answer, shop)}
      aside={
        answer.kinds.length === 0
          ? undefined
          : `The next ${ground.weeks} weeks: about ${Math.round(parcels)} parcels expected, packed by their cards, materials bought again at ${asked.whatIf.prices.size === 0 ? "today’s prices" : "the prices tried below"}, postage ${cardWords(answer, now.today)}. An estimate; the carrier’s own rates decide.`
      }
    >
      <FollowsRecords version={now.version} />
      {answer.kinds.length === 0 ? (
        <>
          {leavesOut(answer, ground).map((words) => (
            <p key={words}>{words}</p>
          ))}
          <p>
            <WayOut answer={answer} />
          </p>
        </>
      ) : (
        <>
          <TotalsAbove answer={answer} shop={shop} />
          <WhatIfForm action="/paper-or-bubble" {...{ tried, ground, query, asked, shownNow }} />
          {leavesOut(answer, ground).map((words) => (
            <p key={words}>{words}</p>
          ))}
          {turning === undefined ? null : (
            <Section
              title={`Where the choice turns: the price of ${turning.name}, a ${unitWord(turning.useUnit, 1)}`}
            >
              {turningOf(turning)}
              {alike.map((supply) => (
                <details key={supply.id} className={styles.more}>
                  <summary>{`The same for the price of ${supply.name}`}</summary>
                  {turningOf(supply)}
                </details>
              ))}
            </Section>
          )}
          <Section title="Parcel by parcel">
            <KindsTable
              kinds={answer.kinds}
              inStyles={answer.styles}
              nameOf={nameOf}
              hrefOf={({ pieces: [piece, ...others] }) =>
                piece === undefined || others.length > 0
                  ? null
                  : `/paper-or-bubble/${encodeURIComponent(piece.itemTypeId)}?pieces=${piece.pieces}${tail}`
              }
              shop={shop}
            />
          </Section>
          <Suspense
            fallback={
              <Section title="The next purchase">
                <p role="status">Working out which packs to buy …</p>
              </Section>
            }
          >
            <NextPurchase now={now} compared={compared} nameOf={nameOf} />
          </Suspense>
          <PastCosts answer={answer} shop={shop} />
          <Section
            title="Time and breakage, if you count them"
            id="settings"
            aside="Your own figures; what broke costs what the piece sells for and both postages. A test parcel tells more than a guess."
          >
            <RecordForm
              action={keepCushionSettings}
              label="Time and breakage"
              layout="line"
              fields={cushionSettingsFields(ground.said, ground.hourMinor, shop.minorDigits, {
                inStyles: answer.styles,
                seen: await brokenByStyle(now.db, addDays(now.today, -YEAR_DAYS)),
              })}
              submit="Save"
            />
          </Section>
        </>
      )}
    </Page>
  );
}

function WayOut({ answer: { untold, single } }: { readonly answer: CushionAnswer }) {
  if (untold.length === 0 && single.length === 0) {
    return (
      <ButtonLink href="/pack" tone="primary">
        Pack a parcel
      </ButtonLink>
    );
  }
  return (
    <ButtonLink href="/recipes" tone="primary">
      {untold.length === 0 ? "Write a second card" : "Mend the cards"}
    </ButtonLink>
  );
}

function cardWords({ card, kinds }: Pick<CushionAnswer, "card" | "kinds">, today: Day): string {
  if (card === null) return "left out, as no rate card holds";
  if (isPostageLeftOut(kinds))
    return `left out, as ${card.service} takes none of them or their weight is not known`;
  const from = formatDay(card.validFrom, { year: true });
  return card.validFrom > today
    ? `by ${card.service} as it will be from ${from}`
    : `by ${card.service} (card from ${from})`;
}
