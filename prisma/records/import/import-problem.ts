/** A field of a parcel that a column can stand for. */
export type ImportField =
  | "packed-day"
  | "order"
  | "item-type"
  | "pieces"
  | "zone"
  | "style"
  | "carton"
  | "scale"
  | "postage"
  | "unusual";

/** One reason why a file is refused. `line` counts lines of the file from 1. */
export type ImportProblem =
  | { readonly kind: "not-text"; readonly reason: "empty" | "spreadsheet" | "binary" | "broken-utf-16" }
  | { readonly kind: "no-rows" }
  | { readonly kind: "unmapped"; readonly field: ImportField }
  | { readonly kind: "day-format"; readonly column: string; readonly fits: readonly string[] }
  | { readonly kind: "broken-quotes"; readonly line: number }
  | { readonly kind: "row-too-long"; readonly line: number }
  | { readonly kind: "row-length"; readonly line: number; readonly cells: number; readonly columns: number }
  | { readonly kind: "missing"; readonly line: number; readonly field: ImportField }
  | {
      readonly kind: "unreadable";
      readonly line: number;
      readonly field: ImportField;
      readonly value: string;
    }
  | { readonly kind: "future-day"; readonly line: number; readonly value: string }
  | { readonly kind: "unknown-value"; readonly field: ImportField; readonly value: string }
  | { readonly kind: "too-many-values"; readonly field: ImportField; readonly limit: number }
  | {
      readonly kind: "rows-disagree";
      readonly line: number;
      readonly field: ImportField;
      readonly orderRef: string;
    }
  | { readonly kind: "stopped" };

/** The problems of a refused file: the first hundred, and how many there are in all. */
export type ImportProblems = { readonly problems: readonly ImportProblem[]; readonly total: number };

/** Problems that a run lists; more are only counted. */
export const PROBLEM_LIMIT = 100;
