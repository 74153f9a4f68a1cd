import type { BrokenInCommon } from "#lib/packing/breakage/broken-in-common";
import { countWord } from "../../pack/parcel-words";

/**
 * What the screen found about broken parcels.
 *
 * @param counts parcels and broken ones of the time looked at
 * @param worst what least looks like luck, with its name; null where nothing was in common
 * @returns one sentence
 */
export function brokenFinding(
  { parcels, broken }: { readonly parcels: number; readonly broken: number },
  worst: { readonly common: BrokenInCommon; readonly name: string } | null,
): string {
  if (parcels === 0) return "No parcels yet, so nothing broke.";
  if (broken === 0) return `None of ${parcels} parcels arrived broken.`;
  const head = `${capital(countWord(broken))} of ${parcels} parcels arrived broken`;
  if (worst === null || worst.common.verdict === "too-few")
    return `${head}: too few to say what they have in common.`;
  return worst.common.verdict === "stands-out"
    ? `${head}; ${worst.name} stands out.`
    : `${head}; nothing that they have in common is more than luck could do.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
