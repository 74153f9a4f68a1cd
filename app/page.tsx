import { Suspense } from "react";
import { formatDayLong } from "#lib/units/day-text";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { FollowsRecords } from "./_parts/follows-records";
import { Message } from "./_parts/message";
import { Page } from "./_parts/page";
import { seenVersion } from "./_parts/seen-version";
import { PlannedOrders } from "./purchase-plan/_parts/planned-orders";
import { planAim } from "./purchase-plan/plan-aim";
import { FirstSteps } from "./setup/_parts/first-steps";
import { firstSteps } from "./setup/first-steps";
import { Asks } from "./this-week/_parts/asks";
import { CardsOff } from "./this-week/_parts/cards-off";
import { CountFirst } from "./this-week/_parts/count-first";
import { CoverTable } from "./this-week/_parts/cover-table";
import { DraftsWaiting } from "./this-week/_parts/drafts-waiting";
import { LastCheck } from "./this-week/_parts/last-check";
import { Peak } from "./this-week/_parts/peak";
import { PlacedOrder } from "./this-week/_parts/placed-order";
import { PricesMoved } from "./this-week/_parts/prices-moved";
import { isAnswerMissing } from "./this-week/answer-missing";
import { askedDay } from "./this-week/asked-day";
import { coverAxis } from "./this-week/cover-axis";
import { keepCheck } from "./this-week/keep-check";
import { thisWeekOn } from "./this-week/this-week-on";
import { weekWords } from "./this-week/week-words";
import { NewShop } from "./welcome/_parts/new-shop";

type ThisWeekProps = { readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

/** This week: what to order today, by which day the rest, and what to count. */
export default async function ThisWeek({ searchParams }: ThisWeekProps) {
  const { today: text, ordered, aim: aimText, sum } = await searchParams;
  const db = await database();
  const version = await seenVersion(db);
  const shop = await shopOf(db);
  if (shop === null) return <NewShop />;
  const asked = askedDay(text);
  const now = instantOfTime(Date.now());
  const askedFor = asked.kind === "day" ? asked.day : null;
  const today = askedFor ?? shopDay(now, shop.timeZone);
  const aim = planAim({ aim: aimText, sum }, shop.minorDigits);
  const facts = await thisWeekOn(db, shop, { today, aim: aim.aim });
  const { check, openLines, parcelsLastWeek } = facts;
  if (asked.kind === "none") await keepCheck(db, check, now);
  const { finding, rows, toCount } = check;
  const names = new Map(rows.map((row) => [row.supplyId, row.supply]));
  const nameOf = (supplyId: string) => names.get(supplyId) ?? supplyId;
  const steps = isAnswerMissing(rows) ? await firstSteps(db) : [];
  return (
    <Page finding={finding} aside={`${formatDayLong(today)}. ${weekWords(parcelsLastWeek)}`}>
      <FollowsRecords version={version} />
      {asked.kind === "unreadable" ? (
        <Message kind="error" title={`The day “${asked.text}” in the address can't be read.`}>
          Write it like ?today={today}. Today's check is shown instead.
        </Message>
      ) : null}
      <PlacedOrder lines={openLines.filter((line) => line.purchaseId === ordered)} asked={askedFor} />
      <FirstSteps steps={steps} />
      {rows.length === 0 ? null : <CoverTable rows={rows} axis={coverAxis(today, shop.weekStartsOn)} />}
      <DraftsWaiting db={db} />
      <Asks>
        <PlannedOrders
          facts={facts}
          today={today}
          asked={askedFor}
          aim={aim}
          sum={typeof sum === "string" ? sum : ""}
          shop={{ currency: shop.currency, minorDigits: shop.minorDigits }}
        />
        <div>
          <CountFirst
            toCount={toCount}
            rows={rows}
            money={{ currency: shop.currency, minorDigits: shop.minorDigits }}
          />
          <Peak rows={facts.peak} />
          <PricesMoved rows={facts.prices} nameOf={nameOf} />
          <LastCheck said={facts.lastCheck} nameOf={nameOf} />
          <Suspense fallback={null}>
            <CardsOff db={db} today={today} />
          </Suspense>
        </div>
      </Asks>
    </Page>
  );
}
