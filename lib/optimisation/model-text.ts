import type { LinearModel, ModelColumn, ModelRow, ModelTerm } from "#lib/optimisation/linear-model";

const TERMS_A_LINE = 8;
const NAME = /^[a-z][a-z0-9_]*$/;

/**
 * A linear model as text in the LP format that solvers read: an objective to minimise, the rows, the bounds
 * and the whole unknowns. A row with two limits is written as two.
 *
 * @param model columns and rows; names of small letters, digits and "_"
 * @returns the text
 * @throws RangeError for a name that the format could take for something else, an unknown column, a number
 *   that is not finite, or bounds that cross
 * @source the LP file format as described in the manual of HiGHS, from memory
 */
export function modelText(model: LinearModel): string {
  const known = new Set(model.columns.map(({ name }) => name));
  const objective = model.columns.map((column): ModelTerm => [column.cost, column.name]);
  const whole = model.columns.filter(({ kind }) => kind === "whole").map(({ name }) => name);
  return [
    "Minimize",
    ` cost: ${sum(objective, known)}`,
    "Subject To",
    ...model.rows.flatMap((row) => rowLines(row, known)),
    "Bounds",
    ...model.columns.map(boundLine),
    ...(whole.length === 0 ? [] : ["Generals", ...whole.map((name) => ` ${name}`)]),
    "End",
    "",
  ].join("\n");
}

function rowLines({ name, terms, lower, upper }: ModelRow, known: ReadonlySet<string>): string[] {
  if (lower > upper) throw new RangeError(`modelText requires limits that do not cross, got row ${name}`);
  const left = sum(terms, known);
  if (lower === upper) return [` ${named(name)}: ${left} = ${number(lower)}`];
  return [
    ...(lower === Number.NEGATIVE_INFINITY ? [] : [` ${named(name)}_lo: ${left} >= ${number(lower)}`]),
    ...(upper === Number.POSITIVE_INFINITY ? [] : [` ${named(name)}_up: ${left} <= ${number(upper)}`]),
  ];
}

function boundLine({ name, lower, upper }: ModelColumn): string {
  if (lower > upper) throw new RangeError(`modelText requires bounds that do not cross, got column ${name}`);
  if (lower === upper) return ` ${named(name)} = ${number(lower)}`;
  const low = lower === Number.NEGATIVE_INFINITY ? "-inf" : number(lower);
  const high = upper === Number.POSITIVE_INFINITY ? "+inf" : number(upper);
  return ` ${low} <= ${named(name)} <= ${high}`;
}

function sum(terms: readonly ModelTerm[], known: ReadonlySet<string>): string {
  if (terms.length === 0) throw new RangeError("modelText requires at least one term in a sum, got none");
  return terms
    .map(([factor, column], index) => {
      if (!known.has(column)) throw new RangeError(`modelText requires a known column, got ${column}`);
      const term = `${factor < 0 ? "-" : "+"} ${number(Math.abs(factor))} ${column}`;
      return index > 0 && index % TERMS_A_LINE === 0 ? `\n  ${term}` : term;
    })
    .join(" ");
}

function named(name: string): string {
  // "e" and "inf" begin numbers in this format, so names must not.
  if (!NAME.test(name) || /^(e|inf|free)/.test(name)) {
    throw new RangeError(`modelText requires a plain name, got ${name}`);
  }
  return name;
}

function number(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`modelText requires finite numbers, got ${value}`);
  return String(value === 0 ? 0 : value);
}
