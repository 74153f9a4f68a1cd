import type { CushionStyle } from "#lib/packing/recipe-version";
import { classList } from "../../_parts/class-list";
import { evenTicks } from "../even-ticks";
import styles from "./paper-or-bubble.module.css";

/** One line of the picture. */
type PictureLine = {
  readonly style: CushionStyle;
  readonly points: readonly { readonly x: number; readonly y: number }[];
};

type LinesPictureProps = {
  /** what the picture shows, in words */
  readonly label: string;
  readonly lines: readonly PictureLine[];
  /** words under the axis and over it */
  readonly xName: string;
  readonly yName: string;
  readonly xText: (x: number) => string;
  readonly yText: (y: number) => string;
  /** ticks across; left out: round ones */
  readonly xTicks?: readonly number[];
  /** where things stand today, across, with its words */
  readonly now: { readonly x: number; readonly words: string } | null;
  /** where the choice turns */
  readonly turns: readonly { readonly x: number; readonly y: number }[];
};

const WIDTH = 480;
const HEIGHT = 290;
const EDGE = { left: 58, right: 66, top: 34, foot: 46 };
const TICKS = 5;
const LEAST_GAP = 15;

/** Lines of cost over a price or a weight, with today and the turns marked; drawn on the server, no script needed. */
export function LinesPicture(props: LinesPictureProps) {
  const { label, lines, xName, yName, xText, yText, now, turns } = props;
  const all = lines.flatMap(({ points }) => points);
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const across = { from: Math.min(...xs), to: Math.max(...xs) };
  const up = evenTicks(Math.min(...ys), Math.max(...ys, Math.min(...ys) + 1), TICKS);
  const atX = (x: number) =>
    EDGE.left + ((x - across.from) / (across.to - across.from)) * (WIDTH - EDGE.left - EDGE.right);
  const atY = (y: number) => EDGE.top + ((up.to - y) / (up.to - up.from)) * (HEIGHT - EDGE.top - EDGE.foot);
  const xTicks = (props.xTicks ?? evenTicks(across.from, across.to, TICKS).ticks).filter(
    (x) => x >= across.from && x <= across.to,
  );
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {up.ticks.map((y) => (
        <g key={y}>
          <path className={styles.grid} d={`M${EDGE.left} ${atY(y)}H${WIDTH - EDGE.right}`} />
          <text x={EDGE.left - 6} y={atY(y) + 4} textAnchor="end">
            {yText(y)}
          </text>
        </g>
      ))}
      {xTicks.map((x) => (
        <g key={x}>
          <path className={styles.grid} d={`M${atX(x)} ${HEIGHT - EDGE.foot}v5`} />
          <text x={atX(x)} y={HEIGHT - EDGE.foot + 18} textAnchor="middle">
            {xText(x)}
          </text>
        </g>
      ))}
      <text x={0} y={12}>
        {yName}
      </text>
      <text x={WIDTH - EDGE.right} y={HEIGHT - 8} textAnchor="end">
        {xName}
      </text>
      {now === null ? null : (
        <>
          <path className={styles.mark} d={`M${atX(now.x)} ${EDGE.top - 6}V${HEIGHT - EDGE.foot}`} />
          <text x={atX(now.x)} y={EDGE.top - 10} textAnchor={nowAnchor(atX(now.x))}>
            {now.words}
          </text>
        </>
      )}
      {lines.map(({ style, points }) => (
        <path
          key={style}
          className={classList(styles.line, styles[style])}
          d={points
            .map(({ x, y }, at) => `${at === 0 ? "M" : "L"}${round(atX(x))} ${round(atY(y))}`)
            .join("")}
        />
      ))}
      {turns.map(({ x, y }) => (
        <circle key={x} className={styles.turn} cx={atX(x)} cy={atY(y)} r={4.5} />
      ))}
      {endNames(lines, atY).map(({ style, y }) => (
        <text key={style} className={styles.name} x={WIDTH - EDGE.right + 6} y={y + 4}>
          {style}
        </text>
      ))}
    </svg>
  );
}

/** The names at the right ends, moved apart where lines end together. */
function endNames(
  lines: readonly PictureLine[],
  atY: (y: number) => number,
): { readonly style: CushionStyle; readonly y: number }[] {
  const ends = lines
    .map(({ style, points }) => ({ style, y: atY(points.at(-1)?.y ?? 0) }))
    .toSorted((a, b) => a.y - b.y);
  const placed: { style: CushionStyle; y: number }[] = [];
  for (const end of ends) {
    const before = placed.at(-1);
    placed.push({ ...end, y: before === undefined ? end.y : Math.max(end.y, before.y + LEAST_GAP) });
  }
  return placed;
}

function nowAnchor(x: number): "start" | "middle" | "end" {
  if (x < WIDTH * 0.25) return "start";
  return x > WIDTH * 0.75 ? "end" : "middle";
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
