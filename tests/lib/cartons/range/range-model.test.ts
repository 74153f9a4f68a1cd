import { afterAll, describe, expect, it } from "vitest";
import { rangeModel, VALUE_PER_MINOR } from "#lib/cartons/range/range-model";
import { rangeSpace } from "#lib/cartons/range/range-space";
import { modelText } from "#lib/optimisation/model-text";
import { endSolver, solveInWorker } from "../../../../app/solver/solve-in-worker";
import { cheapestOf, everyChoice, plainCost, smallTable } from "./small-tables";

const NOTHING = { kept: new Set<number>(), dropped: new Set<number>() };
const objective = (model: ReturnType<typeof rangeModel>, values: Readonly<Record<string, number>>) =>
  model.model.columns.reduce((sum, { name, cost }) => sum + cost * (values[name] ?? Number.NaN), 0);

afterAll(endSolver);

describe("rangeModel", () => {
  it("costs every choice what the table does, and turns its values back", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const table = smallTable(seed);
      const model = rangeModel(rangeSpace(table, new Set()), 3, NOTHING);
      for (const chosen of everyChoice(table.candidates.length, 3)) {
        const values = model.valuesOf(new Set(chosen));
        expect(objective(model, values) * VALUE_PER_MINOR).toBeCloseTo(plainCost(table, chosen), 6);
        expect([...model.chosenOf(values)]).toEqual(chosen);
      }
    }
  });

  it("costs choices with settled sizes the same", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const table = smallTable(seed);
      const settled = { kept: new Set([0]), dropped: new Set([1]) };
      const model = rangeModel(rangeSpace(table, new Set()), 3, settled);
      for (const chosen of everyChoice(table.candidates.length, 3)) {
        if (!chosen.includes(0) || chosen.includes(1)) continue;
        const value = objective(model, model.valuesOf(new Set(chosen)));
        expect(value * VALUE_PER_MINOR).toBeCloseTo(plainCost(table, chosen), 6);
      }
    }
  });

  it("has its least cost where the solver finds it, as the best of all choices", async () => {
    for (let seed = 1; seed <= 40; seed++) {
      const table = smallTable(seed);
      const model = rangeModel(rangeSpace(table, new Set()), 2, NOTHING);
      const answer = await solveInWorker(modelText(model.model), { seconds: 60, gap: 0 });
      expect(answer.kind).toBe("optimal");
      const chosen = [...model.chosenOf(answer.values ?? {})];
      expect(chosen.length).toBeLessThanOrEqual(2);
      expect(plainCost(table, chosen)).toBe(cheapestOf(table, 2));
    }
  });
});
