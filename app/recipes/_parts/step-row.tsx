import { ChoiceField } from "../../_parts/choice-field";
import { Field } from "../../_parts/field";
import type { Choice } from "../../_parts/sentence-choice";
import styles from "./recipe-form.module.css";

type StepRowProps = {
  readonly row: number;
  readonly supplies: readonly Choice[];
  /** the text that a field of the row begins with, and its problem */
  readonly textOf: (field: string) => string;
  readonly problemOf: (field: string) => string | undefined;
};

const PER = [
  { value: "piece", words: "each piece" },
  { value: "parcel", words: "once a parcel" },
];

/** One step of a card as fields: place, what is done, what it takes, how much, for what. */
export function StepRow({ row, supplies, textOf, problemOf }: StepRowProps) {
  return (
    <li className={styles.step}>
      <Field
        label="Place"
        name={`place.${row}`}
        inputMode="numeric"
        size="short"
        defaultValue={textOf("place") || String(row + 1)}
        error={problemOf("place")}
      />
      <Field
        label="What is done"
        name={`words.${row}`}
        defaultValue={textOf("words")}
        error={problemOf("words")}
      />
      <ChoiceField
        label="Takes"
        name={`supplyId.${row}`}
        choices={supplies}
        defaultValue={textOf("supplyId")}
        error={problemOf("supplyId")}
      />
      <Field
        label="How much"
        name={`amount.${row}`}
        size="short"
        defaultValue={textOf("amount")}
        error={problemOf("amount")}
      />
      <ChoiceField
        label="For"
        name={`per.${row}`}
        choices={PER}
        defaultValue={textOf("per") || "piece"}
        error={problemOf("per")}
      />
    </li>
  );
}
