import type { Shop } from "#prisma/records/shop";
import type { FormField } from "../_parts/form-field";
import { buyingTermsFields } from "./buying-terms-fields";
import { promiseChoices, promiseValue } from "./promise";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/**
 * The fields of the shop. A new shop is asked only what cannot be guessed; the rest stands as usual and can be
 * changed here at any time.
 *
 * @param shop the shop, or null before its first day
 * @param guessedZone time zone of the machine, offered to a new shop
 * @returns the fields in order
 */
export function shopFields(shop: Shop | null, guessedZone: string): FormField[] {
  return [
    { name: "name", label: "Name of the shop", kind: "text", value: shop?.name, required: true },
    {
      name: "timeZone",
      label: "Time zone",
      kind: "choice",
      value: shop?.timeZone ?? guessedZone,
      choices: ["UTC", ...Intl.supportedValuesOf("timeZone")].map((zone) => ({
        value: zone,
        words: zone.replaceAll("_", " "),
      })),
    },
    {
      name: "currency",
      label: "Currency",
      kind: "choice",
      value: shop?.currency ?? "USD",
      choices: currencies(),
    },
    {
      name: "measures",
      label: "Measures",
      kind: "choice",
      value: shop?.measures ?? "imperial",
      choices: [
        { value: "imperial", words: "inches, feet, pounds and ounces" },
        { value: "metric", words: "centimetres, grams and kilograms" },
      ],
      hint: "The other kind can always be typed: 30 cm, 1.2 kg, 12 in.",
    },
    {
      name: "weekStartsOn",
      label: "The week starts on",
      kind: "choice",
      value: String(shop?.weekStartsOn ?? 1),
      choices: WEEKDAYS.map((words, index) => ({ value: String(index + 1), words })),
    },
    {
      name: "defaultStyle",
      label: "You usually pack with",
      kind: "choice",
      value: shop?.defaultStyle ?? "paper",
      choices: ["paper", "bubble", "mixed"].map((style) => ({ value: style, words: style })),
    },
    {
      name: "guessedParcels",
      label: "About how many parcels do you send a week?",
      kind: "number",
      value: shop?.guessedParcels?.toString(),
      hint: "A guess is enough: it counts like two weeks of records, less and less as parcels are recorded.",
    },
    ...orderingFields(shop),
  ];
}

function orderingFields(shop: Shop | null): FormField[] {
  const promised = shop === null ? null : { goal: shop.goal, perMille: shop.servicePerMille };
  return [
    {
      name: "promise",
      label: "Of each supply you want to",
      kind: "choice",
      value: promised === null ? "cycles:950" : promiseValue(promised),
      choices: promiseChoices(promised),
      hint:
        "An order cycle lasts from one delivery to the next. To fill from stock counts how much is missing, not how " +
        "often: it takes less stock where orders are large.",
    },
    {
      name: "coverWeeks",
      label: "An order should last, weeks",
      kind: "number",
      value: String(shop?.coverWeeks ?? 8),
      hint: "8 is usual; fewer where room is short",
    },
    {
      name: "reviewDays",
      label: "You look at the shelf every so many days",
      kind: "number",
      value: String(shop?.reviewDays ?? 7),
    },
    ...(shop === null ? [] : buyingTermsFields(shop)),
  ];
}

function currencies() {
  const names = new Intl.DisplayNames("en", { type: "currency" });
  return Intl.supportedValuesOf("currency").map((code) => ({
    value: code,
    words: `${code}, ${names.of(code) ?? code}`,
  }));
}
