"use client";

import { useState } from "react";
import { Button } from "../../../../_parts/button";
import styles from "./sheet.module.css";

/** A text to copy in one press, and to select by hand where the browser does not let a page copy. */
export function CopyText({ text }: { readonly text: string }) {
  const [outcome, setOutcome] = useState("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setOutcome("Copied.");
    } catch (problem) {
      const reason = problem instanceof Error ? problem.message : String(problem);
      setOutcome(`This browser did not copy it (${reason}). Select the text below and copy it by hand.`);
    }
  };
  return (
    <>
      <p className={styles.links}>
        <Button onPress={copy}>Copy as plain text</Button>
        <Button onPress={() => window.print()}>Print</Button>
        <span role="status">{outcome}</span>
      </p>
      <details className={styles.details}>
        <summary>The plain text</summary>
        <pre className={styles.text}>{text}</pre>
      </details>
    </>
  );
}
