import { Button } from "../../../_parts/button";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import type { Choice } from "../../../_parts/sentence-choice";
import styles from "../../_parts/postage.module.css";

type TryFormProps = {
  readonly typed: (name: string) => string;
  readonly problems: ReadonlyMap<string, string>;
  readonly zones: readonly Choice[];
  readonly cartons: readonly Choice[];
  readonly today: string;
};

/** The parcel to be tried; a plain form, so that it works at once. */
export function TryForm({ typed, problems, zones, cartons, today }: TryFormProps) {
  return (
    <form action="/postage/try" method="get" className={styles.form} aria-label="The parcel" noValidate>
      <Field
        label="It weighs"
        name="weight"
        size="short"
        defaultValue={typed("weight")}
        hint="2 lb 3 oz, 1.2 kg"
        error={problems.get("weight")}
        isRequired
      />
      <Field
        label="Three sides, outside"
        name="sizes"
        defaultValue={typed("sizes")}
        hint="12 x 9 x 8 in, at the widest; may be left out"
        error={problems.get("sizes")}
      />
      <ChoiceField
        label="Or one of your cartons"
        name="carton"
        choices={[{ value: "", words: "none" }, ...cartons]}
        defaultValue={typed("carton")}
        hint="counts where no sides are typed"
      />
      <ChoiceField
        label="It goes to"
        name="zone"
        choices={zones}
        defaultValue={typed("zone") || (zones[0]?.value ?? "")}
        error={problems.get("zone")}
      />
      <Field
        label="On"
        name="day"
        type="date"
        size="short"
        defaultValue={typed("day") || today}
        error={problems.get("day")}
      />
      <div className={styles.end}>
        <Button type="submit" tone="primary">
          What does it cost?
        </Button>
      </div>
    </form>
  );
}
