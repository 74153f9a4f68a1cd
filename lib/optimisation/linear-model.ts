/** One unknown of a model. */
export type ModelColumn = {
  readonly name: string;
  readonly kind: "real" | "whole";
  readonly lower: number;
  readonly upper: number;
  /** what one unit of it costs in the objective */
  readonly cost: number;
};

/** A factor and the name of the unknown it multiplies. */
export type ModelTerm = readonly [factor: number, column: string];

/** lower <= sum of the terms <= upper; either may be infinite. */
export type ModelRow = {
  readonly name: string;
  readonly terms: readonly ModelTerm[];
  readonly lower: number;
  readonly upper: number;
};

/** A linear model to be minimised, some unknowns whole. */
export type LinearModel = { readonly columns: readonly ModelColumn[]; readonly rows: readonly ModelRow[] };
