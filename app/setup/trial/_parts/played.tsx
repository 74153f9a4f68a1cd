import type { ReactNode } from "react";
import type { Shop } from "#prisma/records/shop";
import { Message } from "../../../_parts/message";
import { Page } from "../../../_parts/page";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import { keepTried } from "../actions";
import { leansOn } from "../leans-on";
import { moneyWords } from "../money-words";
import type { TrialOutcome } from "../play-trial";
import { type TrialSettings, typedSettings } from "../trial-form";
import { furtherRows, mainRows } from "../trial-rows";
import { trialFinding, weeksWords } from "../trial-words";
import { BestTable } from "./best-table";
import { SuppliesTable } from "./supplies-table";
import styles from "./trial.module.css";
import { TrialTable } from "./trial-table";

const PER_MILLE = 1_000;
const DAYS_A_YEAR = 365;
const DAYS_A_WEEK = 7;

type PlayedProps = {
  readonly outcome: TrialOutcome;
  readonly settings: { readonly present: TrialSettings; readonly tried: TrialSettings };
  readonly shop: Shop;
  readonly form: ReactNode;
  readonly aside: string;
};

/** What a trial found: the finding, six figures, and more for who asks. */
export function Played({ outcome, settings, shop, form, aside }: PlayedProps) {
  if (outcome.kind === "no-past") {
    return (
      <Page finding="Trial run: the records do not reach back a year yet." aside={aside}>
        <Message kind="note" title="The past year can’t be played.">
          Play the coming 13 weeks instead.
        </Message>
        {form}
      </Page>
    );
  }
  if (outcome.kind === "nothing") {
    return (
      <Page finding="Trial run: no supply can be played yet." aside={aside}>
        <Message kind="note" title="A trial needs supplies that are used, counted, and offered at a price.">
          Count them under Supplies, and add an offer with a price on a supply’s page.
        </Message>
        {form}
      </Page>
    );
  }
  const { result } = outcome;
  const money = moneyWords(shop);
  const keepingShare = ((shop.holdingPerMille / PER_MILLE) * result.span.days) / DAYS_A_YEAR;
  const hasRoom = result.supplies.every((supply) => supply.hasRoom);
  const weeks = weeksWords(result.span.days / DAYS_A_WEEK);
  return (
    <Page
      finding={trialFinding({ ...settings, result, keepingShare, orderCost: shop.orderCostMinor, money })}
      aside={`${result.runs} runs of ${result.span.kind === "past" ? `the past ${weeks}` : `the coming ${weeks}`} with ${result.supplies.length} supplies. ${aside}`}
    >
      <TrialTable
        rows={mainRows(result.shop, money)}
        caption={`Over ${weeks}, on average of ${result.runs} runs. ± is two standard errors: where more runs would settle it, 19 times in 20.`}
      />
      <RecordForm
        action={keepTried}
        label="Use the settings to try"
        fields={Object.entries(typedSettings(settings.tried)).map(([name, value]) => ({
          name,
          label: name,
          kind: "hidden",
          value,
        }))}
        submit="Use the settings to try"
      />
      <details className={styles.details}>
        <summary>More figures, and each supply</summary>
        <TrialTable
          rows={furtherRows(result.shop, { money, hasRoom })}
          caption="More figures of the same runs"
        />
        {hasRoom ? null : <p className={styles.note}>The room taken is not told: some packs lack theirs.</p>}
        <SuppliesTable supplies={result.supplies} money={money} />
        <BestTable supplies={result.supplies} money={money} />
      </details>
      <Section title="Try something else" id="settings">
        {form}
      </Section>
      <Section title="What this leans on" id="leans-on">
        <ul className={styles.leans}>
          {leansOn(result, shop, money).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      </Section>
    </Page>
  );
}
