"use client";

import { useId } from "react";
import {
  Area,
  Bar,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from "recharts";
import type { Day } from "#lib/units/day";
import { niceTop } from "../../supplies/[id]/nice-top";
import type { ChartEvent, ChartWeek } from "../chart-week";
import { CHART_HEIGHT, CHART_MARGIN, DAY_AXIS, figureAxis } from "./chart-frame";

/** What the fan chart draws. */
export type FanDrawingProps = {
  readonly weeks: readonly ChartWeek[];
  readonly events: readonly ChartEvent[];
  /** first day of the running week */
  readonly thisWeek: Day;
};

/** Past weeks as bars at rest, the coming ones as a line in two bands. */
export function FanDrawing({ weeks, events, thisWeek }: FanDrawingProps) {
  const hatch = useId();
  const top = niceTop(Math.max(...weeks.map(({ used, eightInTen }) => used ?? eightInTen?.[1] ?? 0)));
  const closed = weeks.filter((week) => week.isClosed);
  return (
    <ResponsiveContainer width="100%" height={CHART_HEIGHT}>
      <ComposedChart data={[...weeks]} margin={CHART_MARGIN} accessibilityLayer={false} barCategoryGap="18%">
        <defs>
          <pattern
            id={hatch}
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line x1="0" y1="0" x2="0" y2="6" stroke="var(--edge)" strokeWidth="2" />
          </pattern>
        </defs>
        <CartesianGrid vertical={false} stroke="var(--rule)" />
        <XAxis dataKey="week" {...DAY_AXIS} />
        <YAxis {...figureAxis(top)} />
        {closed.map(({ week }) => (
          <ReferenceArea key={week} x1={week} x2={week} fill={`url(#${hatch})`} fillOpacity={0.7} />
        ))}
        {events.map(({ mark, from, to }, index) => (
          <ReferenceArea
            key={mark}
            x1={from}
            x2={to}
            fill="var(--soon)"
            fillOpacity={0.1}
            stroke="var(--soon)"
            strokeDasharray="2 4"
            label={{
              value: mark,
              position: "insideTopLeft",
              fill: "var(--ink)",
              fontSize: 13,
              offset: 2 + (index % 2) * 14,
            }}
          />
        ))}
        <Area
          dataKey="eightInTen"
          fill="var(--information)"
          fillOpacity={0.16}
          stroke="var(--information)"
          strokeWidth={1}
          strokeDasharray="3 3"
          isAnimationActive={false}
        />
        <Area
          dataKey="fiveInTen"
          fill="var(--information)"
          fillOpacity={0.34}
          stroke="none"
          isAnimationActive={false}
        />
        <Bar dataKey="used" fill="var(--stock)" isAnimationActive={false} />
        <Line dataKey="expected" stroke="var(--ink)" strokeWidth={2} dot={false} isAnimationActive={false} />
        <ReferenceLine
          x={thisWeek}
          stroke="var(--ink)"
          strokeDasharray="4 3"
          label={{ value: "this week", position: "top", fill: "var(--ink)", fontSize: 13 }}
        />
      </ComposedChart>
    </ResponsiveContainer>
  );
}
