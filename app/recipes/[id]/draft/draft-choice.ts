import { z } from "zod";
import { isMaterial } from "#lib/packing/material";
import type { Measures } from "#lib/units/measures";
import { problemsOf } from "../../../_parts/form-state";
import { lengthTyped, wholeNumber } from "../../../_parts/typed-fields";

const MOST_PIECES = 24;
const LARGEST_CUSHION_UM = 300_000;

/** What a draft is asked with. */
export type DraftChoice = {
  readonly pieces: number;
  /** null: the smallest that leaves the cushion */
  readonly cartonId: string | null;
  /** whether that carton stands in an outer one */
  readonly isDouble: boolean;
  /** null: as the habits ask for this piece */
  readonly cushion: { readonly um: number; readonly typed: string } | null;
  /** supplies to take before others of their material */
  readonly preferred: readonly string[];
};

/** What was asked in the address, as typed: one text a name. */
export type DraftQuery = Readonly<Record<string, string>>;

export type DraftChoiceReading =
  | { readonly kind: "choice"; readonly choice: DraftChoice }
  | { readonly kind: "refused"; readonly problems: Readonly<Record<string, string>> };

/**
 * Reads what a draft is asked with.
 *
 * @param query field names and texts; empty ones missing
 * @param cartonIds cartons that may be chosen
 * @param measures how a cushion without a unit is read
 * @returns the choice, or what to mend by field
 */
export function readDraftChoice(
  query: DraftQuery,
  cartonIds: readonly string[],
  measures: Measures,
): DraftChoiceReading {
  const form = z.object({
    pieces: wholeNumber(1, MOST_PIECES).default(1),
    carton: z
      .string()
      .refine((id) => cartonIds.includes(id), "Choose a carton that is in use and has its sizes.")
      .optional(),
    boxes: z.enum(["one", "two"], "Choose one carton, or a box in a box.").default("one"),
    cushion: lengthTyped(measures)
      .refine(({ um }) => um <= LARGEST_CUSHION_UM, "At most 30 cm (12 in): check its unit.")
      .optional(),
  });
  const read = form.safeParse(query);
  if (!read.success) return { kind: "refused", problems: problemsOf(read.error) };
  const { pieces, carton = null, boxes, cushion = null } = read.data;
  const preferred = Object.entries(query).flatMap(([name, value]) =>
    name.startsWith("use.") && isMaterial(name.slice("use.".length)) ? [value] : [],
  );
  return {
    kind: "choice",
    choice: { pieces, cartonId: carton, isDouble: boxes === "two", cushion, preferred },
  };
}

/**
 * The address of a draft with something asked otherwise.
 *
 * @param itemTypeId item type
 * @param query what was asked before
 * @param change what is asked instead
 * @returns a path with its query
 */
export function draftAddress(itemTypeId: string, query: DraftQuery, change: DraftQuery): string {
  const asked = new URLSearchParams({ ...query, ...change });
  return `/recipes/${encodeURIComponent(itemTypeId)}/draft?${asked}`;
}

/**
 * The query of a page as one text a name.
 *
 * @param params as Next hands them over
 * @returns texts, trimmed; empty ones left out, the first where a name stands twice
 */
export function draftQuery(params: Readonly<Record<string, string | string[] | undefined>>): DraftQuery {
  return Object.fromEntries(
    Object.entries(params).flatMap(([name, value]) => {
      const text = (Array.isArray(value) ? value[0] : value)?.trim() ?? "";
      return text === "" ? [] : [[name, text] as const];
    }),
  );
}
