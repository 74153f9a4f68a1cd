import { FIRST_WEEKS } from "#lib/forecast/shop/first-weeks";
import { Section } from "../../_parts/section";
import { methodWords } from "../method-words";
import { figure, unitTitle } from "../quantity";
import type { SubjectFacts } from "../read-subject";
import styles from "./table.module.css";

const TWO_DIGITS_BELOW = 10;

/** The way that was taken in one sentence, and how the others did. */
export function Method({ facts }: { readonly facts: SubjectFacts }) {
  const { forecast, past, subject, serviceLevel } = facts;
  const taken = methodWords(forecast.method);
  const looked = past.tried.filter((tried) => tried.looks > 0);
  const weeks = past.horizonWeeks === 1 ? "one week" : `${past.horizonWeeks} weeks`;
  const short = Math.round(serviceLevel / (1 - serviceLevel));
  return (
    <Section title="How it was worked out" id="method">
      <p className={styles.text}>{taken.sentence}</p>
      {looked.length === 0 ? (
        <p className={styles.aside}>
          Other ways are held against it once the shop has more than {FIRST_WEEKS} full weeks and some past
          sums can be looked back at.
        </p>
      ) : (
        <>
          <p className={styles.text}>
            Each way below was taken back to past weeks and asked what it would have said. Where several are
            as good as the best, as far as so few weeks can tell, the plainest is taken.
          </p>
          <table className={styles.table}>
            <caption>A lower number is better</caption>
            <thead>
              <tr>
                <th scope="col">Way</th>
                <th scope="col" className={styles.figure}>
                  Cost of being off
                </th>
                <th scope="col" className={styles.figure}>
                  Week’s error
                </th>
                <th scope="col" className={styles.figure}>
                  Looks back
                </th>
              </tr>
            </thead>
            <tbody>
              {looked.map((tried) => {
                const isTaken = tried.name === forecast.method;
                return (
                  <tr key={tried.name} className={isTaken ? styles.marked : undefined}>
                    <th scope="row">
                      {methodWords(tried.name).name}
                      {isTaken ? ", taken" : ""}
                    </th>
                    <td className={styles.figure}>
                      {tried.pinball === null ? "–" : lossText(tried.pinball)}
                    </td>
                    <td className={styles.figure}>
                      {tried.scaledError === null ? "–" : tried.scaledError.toFixed(2)}
                    </td>
                    <td className={styles.figure}>{tried.looks}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
          <dl className={styles.meanings}>
            <dt>Cost of being off</dt>
            <dd>
              {unitTitle(subject.unit)} over {weeks}: how far off what it called enough was on the mean, each
              one short counted {short} times as much as each one too many, in keeping with the service level.
              (Pinball loss; raised a little for ways that fit themselves to the past.)
            </dd>
            <dt>Week’s error</dt>
            <dd>
              How far off its expected next week was, over how much one week differs from the one before.
              Below 1 it beats “as last week”. (Mean absolute scaled error.)
            </dd>
            <dt>Looks back</dt>
            <dd>How many past sums were compared. Such sums overlap.</dd>
          </dl>
        </>
      )}
    </Section>
  );
}

/** Two digits tell the ways apart, also where all are off by little. */
function lossText(loss: number): string {
  return loss < TWO_DIGITS_BELOW ? loss.toPrecision(2) : figure(loss);
}
