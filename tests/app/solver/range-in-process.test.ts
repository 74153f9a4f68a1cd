import { describe, expect, it } from "vitest";
import type { CurvePoint } from "#lib/cartons/range/range-curve";
import { curveInProcess, rangeInProcess } from "../../../app/solver/range-in-process";
import { WorkStopped } from "../../../app/solver/work-in-process";
import { cheapestOf, smallTable } from "../../lib/cartons/range/small-tables";

const question = { table: smallTable(5), most: 3, seconds: 60 };

describe("a carton range in its own process", () => {
  it("is worked out and proven", async () => {
    const range = await rangeInProcess(question).answer;
    expect(range.value).toBe(cheapestOf(question.table, 3));
    expect(range.proof.proven).toBe(true);
  });

  it("tells of each range of the curve before the answer", async () => {
    const told: CurvePoint[] = [];
    const curve = await curveInProcess(question, (point) => {
      told.push(point);
    }).answer;
    expect(told).toEqual(curve);
    expect(curve.map(({ value }) => value)).toEqual(
      [1, 2, 3].map((most) => cheapestOf(question.table, most)),
    );
  });

  it("rejects when it is stopped, and when the table makes no sense", async () => {
    const work = rangeInProcess(question);
    work.stop();
    await expect(work.answer).rejects.toBeInstanceOf(WorkStopped);
    const wrong = { ...question, most: 0 };
    await expect(rangeInProcess(wrong).answer).rejects.toThrow(/process ended with code 1/);
  });
});
