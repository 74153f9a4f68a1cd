import { stringify } from "csv-stringify/sync";
import type { SourcedCard } from "#lib/postage/card-rows/card-row";
import { cardRows } from "#lib/postage/card-rows/card-rows";
import type { Day } from "#lib/units/day";
import { RecordForm } from "../../_parts/record-form";
import { dropRateCard, importRateCards, keepRateCard } from "../actions";
import { fitsForm, rateCardFields } from "../rate-card-fields";
import styles from "./postage.module.css";

type CardChangeProps = {
  readonly id: string;
  /** its zones are names */
  readonly sourced: SourcedCard;
  readonly name: string;
  readonly zones: readonly string[];
  readonly today: Day;
};

/** The way to change a card: by its form, or by its rows where it says more than a form can. */
export function CardChange({ id, sourced, name, zones, today }: CardChangeProps) {
  return (
    <details className={styles.fold}>
      <summary>Change this card</summary>
      {fitsForm(sourced.card) ? (
        <RecordForm
          action={keepRateCard.bind(null, id)}
          label={`Change ${name}`}
          {...rateCardFields(sourced, zones, today)}
          submit="Save the card"
        />
      ) : (
        <RecordForm
          action={importRateCards}
          label={`Change ${name}`}
          fields={[
            { name: "cardId", label: "", kind: "hidden", value: id },
            {
              name: "rows",
              label: "The card as rows",
              kind: "lines",
              value: stringify(cardRows([sourced])).trim(),
              hint: "It has bands, fees or rules that take rows; what each row says stands under Import.",
              required: true,
            },
          ]}
          submit="Save the card"
        />
      )}
      <RecordForm
        action={dropRateCard.bind(null, id)}
        label={`Take off ${name}`}
        fields={[]}
        submit="Take this card off"
        tone="plain"
      />
    </details>
  );
}
