import { HABIT_SOURCES, type Habits, USUAL_HABITS } from "#lib/packing/habits";
import type { Measures } from "#lib/units/measures";
import type { FieldGroup, FormField } from "../../_parts/form-field";
import { lengthShown, massShown, shareShown } from "./habits-form";

const MANNERS = [
  { value: "firm", words: "firmly" },
  { value: "loose", words: "loosely" },
];
const CLOSINGS = [
  { value: "single", words: "one strip above and below" },
  { value: "doubled-bottom", words: "one strip above, two below" },
  { value: "h", words: "an H above and below" },
];

/**
 * The fields of how a shop packs, each with what is common and where that comes from.
 *
 * @param now the shop's habits
 * @param measures how lengths and masses are shown
 * @returns groups in the order of the work
 */
export function habitsFields(now: Habits, measures: Measures): FieldGroup[] {
  const field = (name: string, label: string, shown: (habits: Habits) => string): FormField => ({
    name,
    label,
    kind: "number",
    value: shown(now),
    hint: `commonly ${shown(USUAL_HABITS)}`,
  });
  const choice = (
    name: string,
    label: string,
    choices: FormField["choices"],
    shown: (habits: Habits) => string,
  ): FormField => ({
    ...field(name, label, shown),
    kind: "choice",
    choices,
    hint: `commonly ${choices?.find(({ value }) => value === shown(USUAL_HABITS))?.words ?? ""}`,
  });
  const cushion = (frailty: keyof Habits["cushionUm"], label: string): FormField =>
    field(frailty, label, ({ cushionUm }) => lengthShown(cushionUm[frailty], measures));
  const layers = (name: string, label: string, material: keyof Habits["layers"]): FormField =>
    field(name, label, (habits) => String(habits.layers[material] ?? 1));
  return [
    {
      title: "Cushion between the wraps and the carton",
      note: `Where this comes from: ${HABIT_SOURCES.cushionUm}.`,
      fields: [
        cushion("sturdy", "Round a sturdy piece"),
        cushion("usual", "Round a usual one"),
        cushion("thin", "Round a thin one"),
        field("heavyFrom", "As for a thin one, from a weight of", ({ heavyFromMg }) =>
          massShown(heavyFromMg, measures),
        ),
      ],
    },
    {
      title: "Wraps",
      note: `Where this comes from: ${HABIT_SOURCES.layers}.`,
      fields: [
        layers("smallBubble", "Layers of small bubble", "small-bubble"),
        layers("largeBubble", "Layers of large bubble", "large-bubble"),
        layers("paper", "Layers of packing paper", "packing-paper"),
        field("overlap", "Overlap of a wrap", ({ overlapUm }) => lengthShown(overlapUm, measures)),
        field("perWrap", "Strips of tape a wrap", ({ strips }) => String(strips.perWrap)),
        field("perGuard", "Strips of tape a guard", ({ strips }) => String(strips.perGuard)),
      ],
    },
    {
      title: "Hollows, fill and closing",
      note: `Where this comes from: hollows ${HABIT_SOURCES.hollowManner}; closing: ${HABIT_SOURCES.closing}.`,
      fields: [
        field("hollowShare", "Share of a hollow that is filled", ({ hollowShare }) =>
          shareShown(hollowShare),
        ),
        choice("hollowManner", "Hollows are filled", MANNERS, ({ hollowManner }) => hollowManner),
        choice("fillManner", "The carton is filled", MANNERS, ({ fillManner }) => fillManner),
        choice("closing", "The carton is closed with", CLOSINGS, ({ closing }) => closing),
        field("papers", "Letter, slip and leaflet weigh", ({ papersMg }) => massShown(papersMg, measures)),
      ],
    },
  ];
}
