import { Button } from "../../../_parts/button";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import { promiseChoices, promiseWords } from "../../promise";
import {
  type Query,
  TRIAL_LABELS,
  type TrialReading,
  type TrialSettings,
  typedSettings,
} from "../trial-form";
import { weeksWords } from "../trial-words";
import styles from "./trial.module.css";

type TrialFormProps = {
  readonly present: TrialSettings;
  /** the address; what it asked stays in the fields, also where it is refused */
  readonly query: Query;
  readonly reading: TrialReading;
};

/** The shop's settings on the left, those to try on the right; sent in the address. */
export function TrialForm({ present, query, reading }: TrialFormProps) {
  const problems = reading.kind === "unreadable" ? reading.problems : {};
  const usual = typedSettings(present);
  const asked = (name: keyof typeof usual) => {
    const value = query[name];
    return typeof value === "string" ? value : usual[name];
  };
  return (
    <form method="get" action="/setup/trial" aria-label="Trial run" className={styles.form}>
      <div className={styles.sides}>
        <section aria-labelledby="present-settings">
          <h2 id="present-settings" className={styles.side}>
            As now
          </h2>
          <dl className={styles.settings}>
            <div>
              <dt>Of each supply the shop wants to</dt>
              <dd>{promiseWords(present.promise)}</dd>
            </div>
            <div>
              <dt>An order should last</dt>
              <dd>{weeksWords(present.coverWeeks)}</dd>
            </div>
            <div>
              <dt>The shelf is looked at</dt>
              <dd>{present.reviewDays === 1 ? "every day" : `every ${present.reviewDays} days`}</dd>
            </div>
          </dl>
        </section>
        <section aria-labelledby="tried-settings" className={styles.fields}>
          <h2 id="tried-settings" className={styles.side}>
            To try
          </h2>
          <ChoiceField
            label={TRIAL_LABELS.promise}
            name="promise"
            choices={promiseChoices(present.promise)}
            defaultValue={asked("promise")}
            error={problems.promise}
          />
          <Field
            label={TRIAL_LABELS.coverWeeks}
            name="coverWeeks"
            inputMode="numeric"
            size="short"
            defaultValue={asked("coverWeeks")}
            error={problems.coverWeeks}
          />
          <Field
            label={TRIAL_LABELS.reviewDays}
            name="reviewDays"
            inputMode="numeric"
            size="short"
            defaultValue={asked("reviewDays")}
            error={problems.reviewDays}
          />
          <ChoiceField
            label={TRIAL_LABELS.over}
            name="over"
            choices={[
              { value: "coming", words: "the coming 13 weeks, as forecast" },
              { value: "past", words: "the past year, as recorded" },
            ]}
            defaultValue={query.over === "past" ? "past" : "coming"}
            error={problems.over}
          />
        </section>
      </div>
      <Button type="submit" tone="primary">
        Play them side by side
      </Button>
    </form>
  );
}
