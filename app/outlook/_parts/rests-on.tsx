import Link from "next/link";
import { Section } from "../../_parts/section";
import type { Assumption } from "../assumptions";
import styles from "./rests-on.module.css";

/** What a forecast rests on; what is guessed says so. */
export function RestsOn({ assumptions }: { readonly assumptions: readonly Assumption[] }) {
  return (
    <Section title="What it rests on" id="rests-on">
      <ul className={styles.list}>
        {assumptions.map(({ words, isGuess, link }) => (
          <li key={words}>
            {isGuess ? <strong className={styles.guess}>A guess. </strong> : null}
            {words}
            {link === undefined ? null : (
              <>
                {" "}
                <Link href={link.href} className={styles.change}>
                  {link.words}
                </Link>
              </>
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
}
