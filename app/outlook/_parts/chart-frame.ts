import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { figure } from "../quantity";

/** Room that a chart takes, before and after it is drawn. */
export const CHART_HEIGHT = 280;
export const CHART_MARGIN = { top: 22, right: 6, bottom: 0, left: 0 };
const Y_AXIS_WIDTH = 46;
/** Words along an axis. */
const AXIS_TEXT = { fill: "var(--ink-second)", fontSize: 13 };

/** The axis of days: as many of them in words as there is room for. */
export const DAY_AXIS = {
  tickFormatter: (text: string) => formatDay(day(text)),
  interval: "preserveStart",
  minTickGap: 22,
  tick: AXIS_TEXT,
  tickLine: false,
  axisLine: { stroke: "var(--edge)" },
} as const;

/** The axis of figures, from nothing to a round top. */
export function figureAxis(top: number) {
  return {
    width: Y_AXIS_WIDTH,
    tickFormatter: figure,
    tick: AXIS_TEXT,
    tickLine: false,
    axisLine: false,
    domain: [0, top],
    ticks: [0, top / 2, top],
  };
}
