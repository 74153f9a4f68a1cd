import type { Metadata } from "next";
import Link from "next/link";
import { Message } from "../../_parts/message";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import { Played } from "./_parts/played";
import { TrialForm } from "./_parts/trial-form";
import { playTrial } from "./play-trial";
import { readTrialShop } from "./read-trial-shop";
import { areSame, labelOf, type Query, readTrial, settingsOf } from "./trial-form";

export const metadata: Metadata = { title: "Trial run" };

const ASIDE = "A trial run reckons only: nothing changes until you use the settings to try.";

/** Two settings of the shop side by side, played over weeks to come or gone. */
export default async function TrialPage({ searchParams }: { readonly searchParams: Promise<Query> }) {
  const [query, { db, shop, today }] = await Promise.all([searchParams, shopNow()]);
  const present = settingsOf(shop);
  const reading = readTrial(query, present);
  const form = <TrialForm present={present} query={query} reading={reading} />;
  if (reading.kind !== "settings") {
    const isKept = query.kept === "yes" && reading.kind === "none";
    return (
      <Page
        finding={
          reading.kind === "none"
            ? "Trial run: try other settings on paper before the shop changes."
            : "Trial run: a setting can’t be read."
        }
        aside={ASIDE}
      >
        {isKept ? (
          <Message kind="done" title="These are the shop’s settings now.">
            <Link href="/">This week</Link> reckons with them from now on.
          </Message>
        ) : null}
        {reading.kind === "unreadable" ? <Unreadable problems={reading.problems} query={query} /> : null}
        {form}
      </Page>
    );
  }
  const tried = reading.settings;
  if (areSame(present, tried)) {
    return (
      <Page finding="Trial run: these are the shop’s settings already. Change one to try it." aside={ASIDE}>
        {form}
      </Page>
    );
  }
  const outcome = await playTrial(await readTrialShop(db, shop, today), {
    present,
    tried,
    over: reading.over,
  });
  return <Played outcome={outcome} settings={{ present, tried }} shop={shop} form={form} aside={ASIDE} />;
}

/** What of the address can't be read, by the field that it belongs to. */
function Unreadable({
  problems,
  query,
}: {
  readonly problems: Readonly<Record<string, string>>;
  readonly query: Query;
}) {
  return Object.entries(problems).map(([name, wayOut]) => (
    <Message
      key={name}
      kind="error"
      title={`${labelOf(name)}: “${String(query[name] ?? "")}” can’t be read.`}
    >
      {wayOut}
    </Message>
  ));
}
