"use client";

import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ResponsiveContainer,
  Scatter,
  XAxis,
  YAxis,
} from "recharts";
import type { Day } from "#lib/units/day";
import { niceTop } from "../../supplies/[id]/nice-top";
import { CHART_HEIGHT, CHART_MARGIN, DAY_AXIS, figureAxis } from "./chart-frame";

/** A past sum as the chart draws it. */
export type SaidPoint = {
  readonly from: Day;
  readonly expected: number;
  readonly band: readonly [low: number, high: number];
  readonly inside: number | null;
  readonly outside: number | null;
};

/** Past sums: the band that would have been said, and what came. */
export function SaidDrawing({ points }: { readonly points: readonly SaidPoint[] }) {
  const top = niceTop(
    Math.max(...points.map(({ band, inside, outside }) => Math.max(band[1], inside ?? 0, outside ?? 0))),
  );
  return (
    <ResponsiveContainer width="100%" height={CHART_HEIGHT}>
      <ComposedChart data={[...points]} margin={CHART_MARGIN} accessibilityLayer={false}>
        <CartesianGrid vertical={false} stroke="var(--rule)" />
        <XAxis dataKey="from" {...DAY_AXIS} scale="point" padding={{ left: 8, right: 8 }} />
        <YAxis {...figureAxis(top)} />
        <Area
          dataKey="band"
          fill="var(--information)"
          fillOpacity={0.16}
          stroke="var(--information)"
          strokeWidth={1}
          strokeDasharray="3 3"
          isAnimationActive={false}
        />
        <Line
          dataKey="expected"
          stroke="var(--ink)"
          strokeWidth={1.5}
          dot={false}
          isAnimationActive={false}
        />
        <Scatter dataKey="inside" fill="var(--stock)" shape="circle" isAnimationActive={false} />
        <Scatter dataKey="outside" fill="var(--act)" shape="diamond" isAnimationActive={false} />
      </ComposedChart>
    </ResponsiveContainer>
  );
}
