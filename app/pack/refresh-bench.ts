"use server";

import { refresh } from "next/cache";

/** Reads the bench anew: stock, recipes, what was packed today. Asking in vain rejects and leaves the screen as it is. */
export async function refreshBench(): Promise<void> {
  refresh();
}
