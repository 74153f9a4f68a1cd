import { Button } from "../../../_parts/button";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import { FRAILTIES } from "../../../recipes/piece-fields";
import { PIECE_FORMS } from "../../../recipes/piece-forms";
import { StyleChoiceField } from "../../_parts/style-choice-field";
import type { PackingChoices } from "../../packing-choices";
import { NEW_PIECE } from "../sizes-question";
import styles from "./listing.module.css";

type ListingFormProps = {
  readonly choices: PackingChoices;
  /** What stands in the address, by field. */
  readonly typed: (name: string) => string;
  readonly problems: ReadonlyMap<string, string>;
};

/**
 * What is known of the piece; a plain form, so that it works at once. The sizes show where something new is asked
 * about: the style sheet does that, so that they are there without scripts too.
 */
export function ListingForm({ choices, typed, problems }: ListingFormProps) {
  const cartons = choices.supplies.filter(({ kind }) => kind === "carton");
  return (
    <form action="/pack/listing" method="get" className={styles.form} aria-label="The piece">
      <ChoiceField
        label="What is it?"
        name="type"
        choices={[
          { value: NEW_PIECE, words: "something new: by its sizes" },
          ...choices.itemTypes.map(({ id, name }) => ({ value: id, words: name })),
        ]}
        defaultValue={typed("type") || (choices.itemTypes[0]?.id ?? NEW_PIECE)}
        error={problems.get("type")}
      />
      <fieldset className={styles.sizes}>
        <legend>Its form and sizes</legend>
        <ChoiceField
          label="It is"
          name="form"
          choices={PIECE_FORMS}
          defaultValue={typed("form") || "round"}
          error={problems.get("form")}
        />
        <Field
          label="Outer sizes, handle and spout included"
          name="sizes"
          defaultValue={typed("sizes")}
          hint="the height last: 4 x 4 x 5 in, 10 x 12 cm"
          error={problems.get("sizes")}
        />
        <ChoiceField
          label="How frail it is"
          name="frailty"
          choices={FRAILTIES}
          defaultValue={typed("frailty") || "usual"}
          error={problems.get("frailty")}
        />
      </fieldset>
      <Field
        label="Bare weight of one"
        name="bare"
        size="short"
        defaultValue={typed("bare")}
        hint="370 g, 13 oz; empty: as usual"
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
      <StyleChoiceField defaultValue={typed("style")} error={problems.get("style")} />
      <ChoiceField
        label="Carton"
        name="carton"
        choices={[
          { value: "", words: "the one that suits" },
          ...cartons.map(({ id, name }) => ({ value: id, words: name })),
        ]}
        defaultValue={typed("carton")}
        error={problems.get("carton")}
      />
      <Button type="submit" tone="primary">
        What can I promise?
      </Button>
    </form>
  );
}
