"use client";

import { useActionState } from "react";
import { Button } from "../../../_parts/button";
import { ButtonLink } from "../../../_parts/button-link";
import { BLANK, type FormState } from "../../../_parts/form-state";
import { Message } from "../../../_parts/message";
import styles from "./reality.module.css";

type ProposalFormProps = {
  readonly action: (before: FormState, form: FormData) => Promise<FormState>;
  /** What is asked, for a screen reader. */
  readonly label: string;
  /** Where the card is changed by hand; null where the change can be made from here. */
  readonly editHref: string | null;
};

/** The three answers. Nothing is changed before one of them is pressed. */
export function ProposalForm({ action, label, editHref }: ProposalFormProps) {
  const [state, send, isBusy] = useActionState(action, BLANK);
  const problems = state.kind === "refused" ? Object.values(state.problems) : [];
  return (
    <form action={send} aria-label={label}>
      {problems.map((words) => (
        <Message key={words} kind="error" title={words} />
      ))}
      <div className={styles.answers}>
        {editHref === null ? (
          <Button type="submit" name="answer" value="yes" isDisabled={isBusy}>
            Change from today
          </Button>
        ) : (
          <ButtonLink href={editHref}>Change on the card’s form</ButtonLink>
        )}
        <Button type="submit" name="answer" value="no" isDisabled={isBusy}>
          No, the card is right
        </Button>
        <Button type="submit" name="answer" value="later" isDisabled={isBusy}>
          Later
        </Button>
      </div>
    </form>
  );
}
