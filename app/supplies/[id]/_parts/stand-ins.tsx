import { formatAmount } from "#lib/units/amount-text";
import { type Substitute, substitutesOf } from "#prisma/records/substitutes";
import { type Supply, suppliesOf } from "#prisma/records/supplies";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import { shopNow } from "../../../_parts/shop-now";
import { JOB_WORDS } from "../../job-words";
import { dropStandIn, keepStandIn } from "../stand-in-actions";
import { standInFields } from "../stand-in-form";
import styles from "./buying.module.css";

/** What the seller uses where this supply has run out, and how much of it. */
export async function StandIns({ supply }: { readonly supply: Supply }) {
  const { db } = await shopNow();
  const [rules, supplies] = await Promise.all([substitutesOf(db), suppliesOf(db)]);
  const own = rules.filter((rule) => rule.supplyId === supply.id);
  const others = supplies.filter((other) => other.id !== supply.id && other.kind !== "carton");
  if (supply.kind === "carton" || others.length === 0) return null;
  return (
    <Section
      title={own.length === 0 ? "Nothing of your own stands in for it" : "What stands in for it"}
      id="stand-ins"
      aside="Pack offers it first where this supply has run out, and the purchase plan counts with it. What is common in the trade is offered anyway."
    >
      {own.length === 0 ? null : (
        <ul className={styles.list}>
          {own.map((rule) => (
            <li key={rule.id}>
              {ruleWords(rule, supply, supplies)}
              <RecordForm
                action={dropStandIn.bind(null, rule.id)}
                label="Take this rule off"
                fields={[]}
                submit="Take off"
                tone="plain"
              />
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary>Add what stands in for it</summary>
        <RecordForm
          action={keepStandIn.bind(null, supply.id)}
          label={`Stands in for ${supply.name}`}
          layout="line"
          fields={standInFields(supply, others)}
          submit="Keep this rule"
        />
      </details>
    </Section>
  );
}

function ruleWords(rule: Substitute, supply: Supply, supplies: readonly Supply[]): string {
  const standIn = supplies.find(({ id }) => id === rule.standInId);
  if (standIn === undefined) return "A supply that is gone";
  const much = formatAmount(rule.amount, standIn.useUnit);
  const instead = formatAmount(rule.insteadOf, supply.useUnit);
  const note = rule.note === null ? "" : ` ${rule.note}.`;
  return `${much} of ${standIn.name} instead of ${instead}, where it ${JOB_WORDS[rule.job]}.${note}`;
}
