import { type ImportProblems, PROBLEM_LIMIT } from "#prisma/records/import/import-problem";
import { ButtonLink } from "../../../../_parts/button-link";
import { Message } from "../../../../_parts/message";
import { problemWords } from "../../../../import/problem-words";
import styles from "../../import.module.css";

/** Why a file was refused, line by line, and the way on. */
export function Problems({ problems }: { readonly problems: ImportProblems | null }) {
  const words = [...new Set((problems?.problems ?? []).map(problemWords))];
  const total = problems?.total ?? 0;
  return (
    <>
      <Message
        kind="error"
        title={`${total.toLocaleString("en-US")} ${total === 1 ? "problem" : "problems"} in this file.`}
      >
        Mend the file and choose it again. Nothing was booked.
      </Message>
      <ul className={styles.problems}>
        {words.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {total > PROBLEM_LIMIT ? <p>Only the first {PROBLEM_LIMIT} are listed.</p> : null}
      <ButtonLink href="/setup/import">Choose a file</ButtonLink>
    </>
  );
}
