import { describe, expect, it } from "vitest";
import { planModel } from "#lib/purchasing/plan/plan-model";
import { choiceOfValues, planStart } from "#lib/purchasing/plan/plan-start";
import { smallQuestion } from "./small-question";

describe("a plan as values of the model", () => {
  const model = planModel(smallQuestion(3));
  const lines = model.slots
    .slice(0, 2)
    .map(({ offer, week }, index) => ({ offerId: offer.id, week, packs: index + 1 }));
  const choice = {
    lines,
    standIns: [{ fromSupplyId: "saved", toSupplyId: "supply 0", week: 1, units: 1.5 }],
  };

  it("gives every column a value and comes back as it was", () => {
    const values = planStart(model, choice);
    expect(Object.keys(values)).toEqual(model.model.columns.map(({ name }) => name));
    expect(choiceOfValues(model, values)).toEqual(choice);
  });

  it("is cleared of a solver's dust", () => {
    const dusty = Object.entries(planStart(model, choice)).map(([name, value]) => [name, value + 4e-7]);
    expect(choiceOfValues(model, Object.fromEntries(dusty)).lines).toEqual(choice.lines);
    expect(choiceOfValues(model, Object.fromEntries(dusty)).standIns).toHaveLength(1);
  });
});
