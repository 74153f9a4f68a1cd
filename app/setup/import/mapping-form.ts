import type { ImportMapping, ScaleUnit } from "#prisma/records/import/import-mapping";
import type { ImportField } from "#prisma/records/import/import-problem";
import type { FormField } from "../../_parts/form-field";
import { DAY_FORMATS } from "../../import/day-format";
import type { FileHead } from "../../import/file-head";
import { FIELD_WORDS } from "../../import/problem-words";

type Head = Extract<FileHead, { kind: "head" }>;

/** What the form says: a mapping, or what is missing. */
export type MappingReading =
  | { readonly kind: "mapping"; readonly mapping: ImportMapping }
  | { readonly kind: "incomplete"; readonly problems: Record<string, string> };

const FIELDS = Object.keys(FIELD_WORDS) as ImportField[];
const SCALE_UNITS: readonly ScaleUnit[] = ["g", "kg", "oz", "lb"];

/** The fields of the form in which columns are chosen. */
export function mappingFields(head: Head, mapping: ImportMapping): FormField[] {
  const columns = head.columns.map((column) => ({ value: column, words: column }));
  const fields = FIELDS.map((field): FormField => {
    const needed = field === "packed-day" || field === "item-type";
    const empty = { value: "", words: needed ? "Choose a column" : "Not in this file" };
    const value = mapping.columns[field] ?? "";
    return {
      name: field,
      label: FIELD_WORDS[field].name,
      kind: "choice",
      choices: [empty, ...columns],
      value,
    };
  });
  const formats = [
    { value: "", words: "Choose how" },
    ...DAY_FORMATS.map((value) => ({ value, words: value })),
  ];
  const units = SCALE_UNITS.map((value) => ({ value, words: value }));
  fields.splice(1, 0, {
    name: "dayFormat",
    label: "How days are written",
    kind: "choice",
    choices: formats,
    value: mapping.dayFormat ?? "",
    ...(mapping.dayFormat === null
      ? { hint: "The first rows fit none or several: look at them, then choose." }
      : {}),
  });
  fields.push({
    name: "scaleUnit",
    label: "Scale weights without a unit are in",
    kind: "choice",
    choices: units,
    value: mapping.scaleUnit,
  });
  return fields;
}

/**
 * Reads the form in which columns were chosen.
 *
 * @param sent text by field
 * @param head beginning of the file, for its columns
 */
export function mappingOfForm(sent: Readonly<Record<string, string>>, head: Head): MappingReading {
  const columns: Partial<Record<ImportField, string>> = {};
  const problems: Record<string, string> = {};
  for (const field of FIELDS) {
    const column = sent[field];
    if (column === undefined || !head.columns.includes(column)) continue;
    const taken = Object.values(columns).includes(column);
    if (taken) problems[field] = "This column is chosen twice.";
    columns[field] = column;
  }
  for (const field of ["packed-day", "item-type"] as const) {
    if (columns[field] === undefined) problems[field] = "Choose the column that holds it.";
  }
  const dayFormat = DAY_FORMATS.find((format) => format === sent.dayFormat) ?? null;
  if (dayFormat === null) problems.dayFormat = "Choose how days are written in this file.";
  const scaleUnit = SCALE_UNITS.find((unit) => unit === sent.scaleUnit) ?? "g";
  if (Object.keys(problems).length > 0) return { kind: "incomplete", problems };
  return { kind: "mapping", mapping: { columns, dayFormat, scaleUnit } };
}
