import type { LinearModel } from "#lib/optimisation/linear-model";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { PlanModel } from "#lib/purchasing/plan/plan-model";
import { planStart } from "#lib/purchasing/plan/plan-start";

/** Names of rows and columns that values break, and what the values cost. */
export function brokenBy(
  model: LinearModel,
  values: Readonly<Record<string, number>>,
): { broken: string[]; cost: number } {
  const of = (name: string): number => values[name] ?? Number.NaN;
  const isWithin = (value: number, lower: number, upper: number) =>
    value >= lower - 1e-7 && value <= upper + 1e-7;
  const rows = model.rows.filter(({ terms, lower, upper }) => {
    const sum = terms.reduce((total, [factor, name]) => total + factor * of(name), 0);
    return !isWithin(sum, lower, upper);
  });
  const columns = model.columns.filter(({ name, lower, upper }) => !isWithin(of(name), lower, upper));
  const cost = model.columns.reduce((total, column) => total + column.cost * of(column.name), 0);
  return { broken: [...rows, ...columns].map(({ name }) => name.replace(/_\d+$/, "")), cost };
}

/** The same for a plan. */
export const brokenByPlan = (model: PlanModel, choice: PlanChoice) =>
  brokenBy(model.model, planStart(model, choice));
