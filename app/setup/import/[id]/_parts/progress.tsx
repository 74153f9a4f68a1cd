"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { z } from "zod";
import styles from "../../import.module.css";

const answer = z.object({ state: z.string(), rowsRead: z.number() });
const ASK_EVERY_MS = 700;
const REFRESH_AGAIN_MS = 10_000;

type ProgressProps = { readonly runId: string; readonly state: string; readonly rowsRead: number };

/** How far an import is; the page moves on by itself when it is done. */
export function Progress({ runId, state, rowsRead }: ProgressProps) {
  const router = useRouter();
  const [rows, setRows] = useState(rowsRead);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    async function ask() {
      const now = await progressOf(runId);
      if (now !== null) setRows(now.rowsRead);
      const hasMovedOn = now !== null && now.state !== state;
      if (hasMovedOn) router.refresh();
      // The refreshed page takes this part away; asking again at once would only hold it up.
      timer = setTimeout(ask, hasMovedOn ? REFRESH_AGAIN_MS : ASK_EVERY_MS);
    }
    timer = setTimeout(ask, ASK_EVERY_MS);
    return () => clearTimeout(timer);
  }, [runId, state, router]);
  return (
    <>
      <progress className={styles.progress} aria-label="Import" />
      <p role="status">
        {rows.toLocaleString("en-US")} rows read. You can go on recording parcels meanwhile.
      </p>
    </>
  );
}

/** How far the run is; null where the program does not answer just now. */
async function progressOf(runId: string): Promise<z.infer<typeof answer> | null> {
  try {
    const response = await fetch(`/api/imports/${runId}`, { cache: "no-store" });
    return response.ok ? answer.parse(await response.json()) : null;
  } catch (error) {
    if (error instanceof TypeError) return null;
    throw error;
  }
}
