import type { LinearModel, ModelColumn, ModelRow, ModelTerm } from "#lib/optimisation/linear-model";

/** A model that is being written; what is added is kept in order. */
export type ModelDraft = {
  /** adds an unknown, and gives its name back */
  readonly column: (column: ModelColumn) => string;
  /** adds lower <= terms <= upper; a row without limits is left out */
  readonly row: (name: string, lower: number, terms: readonly ModelTerm[], upper: number) => void;
  readonly model: () => LinearModel;
};

/**
 * An empty draft of a linear model.
 *
 * @returns the draft
 * @throws RangeError from `column` when a name is taken, and from `row` for limits that no values could meet
 * @example const draft = modelDraft(); draft.column({ name: "x", kind: "whole", lower: 0, upper: 3, cost: 2 })
 */
export function modelDraft(): ModelDraft {
  const columns = new Map<string, ModelColumn>();
  const rows: ModelRow[] = [];
  return {
    column: (column) => {
      if (columns.has(column.name)) {
        throw new RangeError(`modelDraft requires new column names, got ${column.name} again`);
      }
      columns.set(column.name, column);
      return column.name;
    },
    row: (name, lower, terms, upper) => {
      if (lower > upper)
        throw new RangeError(`modelDraft requires limits that do not cross, got row ${name}`);
      const isOpen = lower === Number.NEGATIVE_INFINITY && upper === Number.POSITIVE_INFINITY;
      if (!isOpen) rows.push({ name: `${name}_${rows.length}`, terms, lower, upper });
    },
    model: () => ({ columns: [...columns.values()], rows }),
  };
}
