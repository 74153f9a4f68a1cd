import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { type ItemType, itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { whatIf } from "#prisma/records/what-if";
import type { Subject } from "./subject";
import { type Query, readWhatIf, type WhatIfReading } from "./what-if-form";

/** What the address asks, what there is to choose, and the answer. */
export type WhatIfFacts = {
  readonly reading: WhatIfReading;
  /** null where nothing is asked, or nothing would be used */
  readonly changed: SubjectForecast | null;
  readonly itemTypes: readonly ItemType[];
};

/**
 * Answers the what-if of an address. Nothing is stored.
 *
 * @param db the open database
 * @param question the address, the subject and the day
 */
export async function readWhatIfAnswer(
  db: Database,
  { query, subject, today }: { readonly query: Query; readonly subject: Subject; readonly today: Day },
): Promise<WhatIfFacts> {
  const stylesOf = subject.kind === "supply" ? await stylesByItemType(db, today) : new Map();
  const itemTypes = stylesOf.size === 0 ? [] : (await itemTypesOf(db)).filter(({ id }) => stylesOf.has(id));
  const reading = readWhatIf(query, stylesOf);
  const changed = reading.kind === "change" ? await whatIf(db, today, subject, reading.change) : null;
  return { reading, changed, itemTypes };
}

/** Cushion styles that each item type has a recipe for on a day. */
async function stylesByItemType(db: Database, today: Day): Promise<Map<string, Set<CushionStyle>>> {
  const styles = new Map<string, Set<CushionStyle>>();
  for (const { itemTypeId, style, effectiveFrom } of await recipesOf(db)) {
    if (effectiveFrom <= today) styles.set(itemTypeId, (styles.get(itemTypeId) ?? new Set()).add(style));
  }
  return styles;
}
