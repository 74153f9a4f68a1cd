"use client";

import { useEffect, useState } from "react";
import { Message } from "./message";
import { readAnew } from "./read-anew";

/** Another device's record is to be seen within five seconds: two rounds, with time to read the screen. */
const ASK_EVERY_MS = 2_000;
const NOT_PAIRED = 401;

/**
 * Reads an open screen anew once another device, or another window, has written something. A screen that nobody looks
 * at asks nothing; where nobody answers, it stays as it is. A device that was sent away is told so.
 *
 * @example <FollowsRecords version={version} />
 */
export function FollowsRecords({ version }: { readonly version: string }) {
  const [isPaired, setPaired] = useState(true);
  useEffect(() => {
    let isAsking = false;
    const ask = async (): Promise<void> => {
      if (isAsking || document.visibilityState !== "visible") return;
      isAsking = true;
      setPaired((await followed(version)) !== "not-paired");
      isAsking = false;
    };
    const timer = setInterval(() => void ask(), ASK_EVERY_MS);
    const shown = (): void => void ask();
    document.addEventListener("visibilitychange", shown);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", shown);
    };
  }, [version]);
  if (isPaired) return null;
  return (
    <Message kind="error" title="This device is not let in any more.">
      <p>
        What is kept on it stays and goes out once it is let in again. <a href="/pair">Pair it again</a>
      </p>
    </Message>
  );
}

/** Asks once, and reads the screen anew where something was written; where nobody answers, the next round asks again. */
async function followed(version: string): Promise<"answered" | "not-paired" | "no-answer"> {
  try {
    const answer = await fetch("/api/written", {
      cache: "no-store",
      signal: AbortSignal.timeout(ASK_EVERY_MS),
    });
    if (answer.status === NOT_PAIRED) return "not-paired";
    // A page that a network puts in the program's place says "fine" as well.
    if (!answer.ok || !answer.headers.get("content-type")?.startsWith("text/plain")) return "no-answer";
    if ((await answer.text()) !== version) await readAnew();
    return "answered";
  } catch (error) {
    // fetch throws a TypeError where nobody answers, a DOMException when time is up.
    if (!(error instanceof TypeError || error instanceof DOMException)) reportError(error);
    return "no-answer";
  }
}
