/** Room that a chart takes, before and after it is drawn. */
export const CHART_HEIGHT = 280;
export const CHART_MARGIN = { top: 22, right: 6, bottom: 0, left: 0 };
export const Y_AXIS_WIDTH = 46;
/** Words along an axis. */
export const AXIS_TEXT = { fill: "var(--ink-second)", fontSize: 13 };
