import Link from "next/link";
import { formatDay } from "#lib/units/day-text";
import { unitWord } from "#lib/units/use-unit";
import type { Supply } from "#prisma/records/supplies";
import { Button } from "../../_parts/button";
import { ChoiceField } from "../../_parts/choice-field";
import { Field } from "../../_parts/field";
import type { CushionGround } from "../cushion-ground";
import { type AskedWhatIf, CARD_FIELD, priceField } from "../what-if";
import styles from "./paper-or-bubble.module.css";

type WhatIfFormProps = {
  /** the address of the screen */
  readonly action: string;
  /** supplies whose price may turn the choice */
  readonly tried: readonly Supply[];
  readonly ground: CushionGround;
  readonly query: Readonly<Record<string, string>>;
  readonly asked: AskedWhatIf;
  /** a supply's price as its field shows it */
  readonly shownNow: (supplyId: string) => string;
  /** other fields of the address to keep */
  readonly kept?: Readonly<Record<string, string>>;
};

/** Prices and the rate card in place, to try others; nothing of it is stored. A plain form, so that it works at once. */
export function WhatIfForm(props: WhatIfFormProps) {
  const { action, tried, ground, query, asked, shownNow, kept = {} } = props;
  const isTried = asked.whatIf.prices.size > 0 || asked.whatIf.cardId !== null;
  return (
    <form action={action} method="get" className={styles.form} aria-label="Try other prices">
      {Object.entries(kept).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {tried.map(({ id, name, useUnit }) => (
        <Field
          key={id}
          label={`${name}, a ${unitWord(useUnit, 1)}`}
          name={priceField(id)}
          size="short"
          inputMode="decimal"
          defaultValue={query[priceField(id)] ?? shownNow(id)}
          hint={shownNow(id) === "" ? "no price known: counts as nothing" : `now ${shownNow(id)}`}
          error={asked.problems.get(priceField(id))}
        />
      ))}
      {ground.cards.length < 2 && asked.whatIf.cardId === null ? null : (
        <ChoiceField
          label="Postage by"
          name={CARD_FIELD}
          choices={[
            { value: "", words: "the card that holds" },
            ...ground.cards.map(({ id, service, validFrom }) => ({
              value: id,
              words: `${service}, from ${formatDay(validFrom, { year: true })}`,
            })),
          ]}
          defaultValue={asked.whatIf.cardId ?? ""}
          error={asked.problems.get(CARD_FIELD)}
        />
      )}
      <div className={styles.go}>
        <Button type="submit">Try these</Button>
      </div>
      {isTried ? (
        <p className={styles.small}>
          Tried out, stored nowhere.{" "}
          <Link href={`${action}${asAddress(kept)}`}>Back to the prices as they are</Link>
        </p>
      ) : null}
    </form>
  );
}

function asAddress(kept: Readonly<Record<string, string>>): string {
  const text = new URLSearchParams(kept).toString();
  return text === "" ? "" : `?${text}`;
}
