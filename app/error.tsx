"use client";

import { Button } from "./_parts/button";
import { Page } from "./_parts/page";

type ErrorScreenProps = { readonly error: Error & { digest?: string }; readonly reset: () => void };

/** What is shown when a screen fails: that nothing was half recorded, and the ways out. */
export default function ErrorScreen({ error, reset }: ErrorScreenProps) {
  return (
    <Page
      width="narrow"
      finding="This screen could not be shown."
      aside="A record is kept whole or not at all, so nothing was half written."
      actions={
        <Button tone="primary" onPress={reset}>
          Try again
        </Button>
      }
    >
      <p>If it happens again, look at the terminal where wadding runs: the reason stands there.</p>
      {error.digest === undefined ? null : <p>The mark of this failure there is {error.digest}.</p>}
    </Page>
  );
}
