/** One step of a reckoning, for a screen to print in order. */
export type ReckoningLine = { readonly label: string; readonly value: string; readonly note: string | null };
