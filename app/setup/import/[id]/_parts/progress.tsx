"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { z } from "zod";
import styles from "../../import.module.css";

const answer = z.object({ state: z.string(), rowsRead: z.number() });
const ASK_EVERY_MS = 700;

type ProgressProps = { readonly runId: string; readonly state: string; readonly rowsRead: number };

/** How far an import is; the page moves on by itself when it is done. */
export function Progress({ runId, state, rowsRead }: ProgressProps) {
  const router = useRouter();
  const [rows, setRows] = useState(rowsRead);
  useEffect(() => {
    const timer = setInterval(async () => {
      const response = await fetch(`/api/imports/${runId}`, { cache: "no-store" });
      if (!response.ok) return;
      const now = answer.parse(await response.json());
      setRows(now.rowsRead);
      if (now.state !== state) router.refresh();
    }, ASK_EVERY_MS);
    return () => clearInterval(timer);
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
