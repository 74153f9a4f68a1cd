import { Button } from "../../../_parts/button";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import { StyleChoiceField } from "../../../pack/_parts/style-choice-field";
import styles from "./fit.module.css";

type FitFormProps = {
  readonly typed: (name: string) => string;
  readonly problems: ReadonlyMap<string, string>;
  readonly usualCushion: string;
};

/** What is to be packed; a plain form, so that it works at once. */
export function FitForm({ typed, problems, usualCushion }: FitFormProps) {
  return (
    <form action="/cartons/fit" method="get" className={styles.form} aria-label="The pieces">
      <Field
        label="Three sizes, the height last"
        name="pieces"
        size="rows"
        defaultValue={typed("pieces")}
        hint="5 x 5 x 6 in; several: a line each, 2 of 5 x 5 x 6"
        error={problems.get("pieces")}
      />
      <ChoiceField
        label="These are"
        name="wrap"
        choices={[
          { value: "bare", words: "bare pieces: wrap them as usual" },
          { value: "wrapped", words: "wrapped already" },
        ]}
        defaultValue={typed("wrap") || "bare"}
      />
      <details className={styles.more} open={problems.size > 0 || hasMore(typed)}>
        <summary>Weight, cushion, how it is packed</summary>
        <div className={styles.fields}>
          <Field
            label="All of it weighs"
            name="weight"
            size="short"
            defaultValue={typed("weight")}
            hint="bare; for postage and rating"
            error={problems.get("weight")}
          />
          <Field
            label={`Cushion, if not ${usualCushion}`}
            name="cushion"
            size="short"
            defaultValue={typed("cushion")}
            error={problems.get("cushion")}
          />
          <StyleChoiceField defaultValue={typed("style")} error={problems.get("style")} />
          <label className={styles.tick}>
            <input type="checkbox" name="upright" value="yes" defaultChecked={typed("upright") !== ""} />
            this side up
          </label>
          <label className={styles.tick}>
            <input type="checkbox" name="sturdy" value="yes" defaultChecked={typed("sturdy") !== ""} />
            not fragile
          </label>
        </div>
      </details>
      <Button type="submit" tone="primary">
        Which carton?
      </Button>
    </form>
  );
}

function hasMore(typed: FitFormProps["typed"]): boolean {
  return ["weight", "cushion", "style", "upright", "sturdy"].some((name) => typed(name) !== "");
}
