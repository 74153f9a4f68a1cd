import { describe, expect, it } from "vitest";
import { modelDraft } from "#lib/optimisation/model-draft";

const column = { name: "x", kind: "whole", lower: 0, upper: 3, cost: 2 } as const;

describe("a model draft", () => {
  it("keeps columns and rows in order and tells rows of one name apart", () => {
    const draft = modelDraft();
    draft.column(column);
    draft.row("least", 1, [[1, "x"]], Number.POSITIVE_INFINITY);
    draft.row("least", 2, [[1, "x"]], 3);
    const { columns, rows } = draft.model();
    expect(columns).toEqual([column]);
    expect(rows.map(({ name, lower, upper }) => [name, lower, upper])).toEqual([
      ["least_0", 1, Number.POSITIVE_INFINITY],
      ["least_1", 2, 3],
    ]);
  });

  it("leaves out a row without limits, and refuses names twice and limits that cross", () => {
    const draft = modelDraft();
    draft.column(column);
    draft.row("open", Number.NEGATIVE_INFINITY, [[1, "x"]], Number.POSITIVE_INFINITY);
    expect(draft.model().rows).toEqual([]);
    expect(() => draft.column(column)).toThrow(
      new RangeError("modelDraft requires new column names, got x again"),
    );
    expect(() => draft.row("odd", 2, [[1, "x"]], 1)).toThrow(/got row odd/);
  });
});
