import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { formatDay } from "#lib/units/day-text";
import { ButtonLink } from "../../_parts/button-link";
import { FollowsRecords } from "../../_parts/follows-records";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import { unitCostWords } from "../unit-cost-words";
import { Ledger } from "./_parts/ledger";
import { Offers } from "./_parts/offers";
import { OnOrder } from "./_parts/on-order";
import { Spoilt } from "./_parts/spoilt";
import { StandIns } from "./_parts/stand-ins";
import { UseChart } from "./_parts/use-chart";
import { supplyFinding } from "./supply-finding";
import { supplyScreen } from "./supply-screen";

export const metadata: Metadata = { title: "Supply" };

type SupplyPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly before?: string }>;
};

/** One supply: where it went, what it costs, what is on order, and every movement. */
export default async function SupplyPage({ params, searchParams }: SupplyPageProps) {
  const { db, shop, today, version } = await shopNow();
  const { id } = await params;
  const before = Number((await searchParams).before);
  const screen = await supplyScreen(db, shop, {
    supplyId: id,
    today,
    before: before > 0 ? before : undefined,
  });
  if (screen === null) notFound();
  const { supply } = screen;
  const counted = screen.countedDay === null ? "Never counted" : `Counted ${formatDay(screen.countedDay)}`;
  const cost = unitCostWords(screen.unitCost, supply.useUnit, shop);
  return (
    <Page
      finding={supplyFinding(supply, screen.onHand, screen.usePerWeek)}
      aside={[screen.sentence, `${counted}; ${cost}${supply.guessed ? "; its sizes are guessed" : ""}.`]
        .filter((part) => part !== null)
        .join(" ")}
      actions={
        <>
          <ButtonLink href={`/supplies/count#${supply.id}`} tone="primary">
            Count it
          </ButtonLink>
          <ButtonLink href={`/outlook/supplies/${supply.id}`}>Its outlook</ButtonLink>
          <ButtonLink href={`/supplies/${supply.id}/edit`}>Change its sizes</ButtonLink>
        </>
      }
    >
      <FollowsRecords version={version} />
      <UseChart weeks={screen.weeks} unit={supply.useUnit} />
      <OnOrder screen={screen} shop={shop} today={today} />
      <Offers screen={screen} shop={shop} />
      <StandIns supply={supply} />
      <Spoilt supply={supply} today={today} lastLine={screen.lastLine} />
      <Ledger rows={screen.ledger} olderHref={screen.olderHref} />
    </Page>
  );
}
