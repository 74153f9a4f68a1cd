import { EVENT_LIMITS, type PlannedEvent } from "#lib/forecast/planned-event";
import type { ItemType } from "#prisma/records/item-types";
import type { FormField } from "../../_parts/form-field";

/**
 * The fields of a planned event.
 *
 * @param event the event, or null for a new one
 * @param itemTypes all item types; those out of use are offered where the event holds for them already
 * @returns the fields in order
 */
export function eventFields(event: PlannedEvent | null, itemTypes: readonly ItemType[]): FormField[] {
  const held = new Set(event?.itemTypeIds);
  const offered = itemTypes.filter((itemType) => !itemType.retired || held.has(itemType.id));
  const ticks: FormField = {
    name: "itemTypeIds",
    label: "Only for some item types?",
    kind: "ticks",
    value: event?.itemTypeIds.join("\n"),
    hint: "Tick them. Without a tick the event holds for all.",
    choices: offered.map(({ id, name, retired }) => ({
      value: id,
      words: retired ? `${name}, out of use` : name,
    })),
  };
  return [
    { name: "name", label: "What happens", kind: "text", value: event?.name, required: true },
    { name: "fromDay", label: "First day", kind: "day", value: event?.fromDay, required: true },
    {
      name: "toDay",
      label: "Last day",
      kind: "day",
      value: event?.toDay,
      hint: `The same day for one day; at most ${EVENT_LIMITS.days} days`,
      required: true,
    },
    {
      name: "upliftPercent",
      label: "How much more than usual, in percent",
      // Not a number field: the number keys of some phones have no minus.
      kind: "text",
      value: event?.upliftPercent.toString(),
      hint: "Your guess. 50 is half as much again, 100 twice as much, -20 a fifth less.",
      required: true,
    },
    ...(offered.length === 0 ? [] : [ticks]),
  ];
}
