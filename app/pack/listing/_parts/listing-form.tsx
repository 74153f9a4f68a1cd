import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { Button } from "../../../_parts/button";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import type { PackingChoices } from "../../packing-choices";
import styles from "./listing.module.css";

type ListingFormProps = {
  readonly choices: PackingChoices;
  /** What stands in the address, by field. */
  readonly typed: (name: string) => string;
  readonly problems: ReadonlyMap<string, string>;
};

/** What is known of the piece; a plain form, so that it works at once. */
export function ListingForm({ choices, typed, problems }: ListingFormProps) {
  const cartons = choices.supplies.filter(({ kind }) => kind === "carton");
  return (
    <form action="/pack/listing" method="get" className={styles.form} aria-label="The piece">
      <ChoiceField
        label="What is it?"
        name="type"
        choices={choices.itemTypes.map(({ id, name }) => ({ value: id, words: name }))}
        defaultValue={typed("type")}
        error={problems.get("type")}
      />
      <Field
        label="Bare weight of one"
        name="bare"
        size="short"
        defaultValue={typed("bare")}
        hint="empty: as usual"
        error={problems.get("bare")}
      />
      <Field
        label="Pieces in one parcel"
        name="pieces"
        size="short"
        inputMode="numeric"
        defaultValue={typed("pieces") || "1"}
        error={problems.get("pieces")}
      />
      <ChoiceField
        label="Packed on"
        name="style"
        size="short"
        choices={[
          { value: "", words: "as usual" },
          ...CUSHION_STYLES.map((style) => ({ value: style, words: style })),
        ]}
        defaultValue={typed("style")}
      />
      <ChoiceField
        label="Carton"
        name="carton"
        choices={[
          { value: "", words: "by the card" },
          ...cartons.map(({ id, name }) => ({ value: id, words: name })),
        ]}
        defaultValue={typed("carton")}
      />
      <Button type="submit" tone="primary">
        What can I promise?
      </Button>
    </form>
  );
}
