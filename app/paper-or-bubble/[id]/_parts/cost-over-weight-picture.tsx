import type { CostOverWeight } from "#lib/cushioning/cost-over-weight";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { LinesPicture } from "../../_parts/lines-picture";
import { weightTicks } from "../weight-ticks";

type CostOverWeightPictureProps = {
  readonly over: CostOverWeight;
  readonly bareMg: number;
  readonly measures: Measures;
  readonly money: (minor: number) => string;
};

/** The saw-tooth: what each way costs for lighter and heavier pieces, with the steps of the rate card in it. */
export function CostOverWeightPicture({ over, bareMg, measures, money }: CostOverWeightPictureProps) {
  const { points, turns } = over;
  const inStyles = [...(points[0]?.totals.keys() ?? [])];
  const mass = (mg: number) => formatMass(milligrams(Math.round(mg)), measures);
  const from = points[0]?.bareMg ?? 0;
  const to = points.at(-1)?.bareMg ?? 0;
  return (
    <LinesPicture
      label={`Cost of a parcel in each way for bare pieces from ${mass(from)} to ${mass(to)}; the table below has the figures`}
      lines={inStyles.map((style) => ({
        style,
        points: points.map(({ bareMg: x, totals }) => ({ x, y: totals.get(style) ?? 0 })),
      }))}
      xName="bare pieces of the parcel"
      yName="a parcel, all together"
      xText={mass}
      yText={money}
      xTicks={weightTicks(from, to, measures)}
      now={{ x: bareMg, words: `as it is, ${mass(bareMg)}` }}
      turns={turns.map(({ bareMg: x, from: style }) => ({ x, y: nearestTotal(over, x, style) }))}
    />
  );
}

/** Between two points the line is straight. */
function nearestTotal(
  { points }: CostOverWeight,
  x: number,
  style: Parameters<CostOverWeight["points"][number]["totals"]["get"]>[0],
): number {
  const at = points.findIndex(({ bareMg }) => bareMg >= x);
  const [low, high] = [points[at - 1], points[at]];
  if (low === undefined || high === undefined) return 0;
  const share = (x - low.bareMg) / (high.bareMg - low.bareMg);
  return (low.totals.get(style) ?? 0) * (1 - share) + (high.totals.get(style) ?? 0) * share;
}
