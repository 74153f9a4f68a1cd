import { formatLength, micrometres } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import type { CartonSettings } from "#prisma/records/carton-terms";
import type { FormField } from "../_parts/form-field";

/**
 * The fields of how the shop judges its cartons.
 *
 * @param settings as they are kept
 * @param shop how it writes lengths and money
 */
export function cartonSettingsFields(
  { ageing: { slow, sits }, bulgeUm, cutMinutes, hourMinor }: CartonSettings,
  { measures, minorDigits }: { readonly measures: Measures; readonly minorDigits: number },
): FormField[] {
  const whole = (name: string, label: string, value: number, hint?: string): FormField => ({
    name,
    label,
    kind: "number",
    value: String(value),
    ...(hint === undefined ? {} : { hint }),
  });
  return [
    whole("slowWeeks", "Slow when not used for, open weeks", slow.silentWeeks),
    whole("slowMonths", "or enough for, months (slow)", slow.coverMonths),
    whole("sitsWeeks", "Sits when not used for, open weeks", sits.silentWeeks),
    whole("sitsMonths", "or enough for, months (sits)", sits.coverMonths),
    {
      name: "bulge",
      label: "A packed wall bows out by",
      kind: "text",
      value: bulgeUm === 0 ? "" : formatLength(micrometres(bulgeUm), measures),
      hint: "empty: not at all; measure a packed one at its widest",
    },
    whole("cutMinutes", "Cutting one down takes, minutes", cutMinutes, "3 to 6, from memory: a guess"),
    {
      name: "hour",
      label: "An hour of your time counts",
      kind: "text",
      value: hourMinor === null ? "" : (hourMinor / 10 ** minorDigits).toFixed(minorDigits),
      hint: "empty: it is not counted",
    },
  ];
}
