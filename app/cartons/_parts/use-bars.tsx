import styles from "./cartons.module.css";

const HEIGHT = 20;
const PITCH = 7;
const WIDTH = 5;

type UseBarsProps = {
  /** Cartons used in each twelfth of the year, oldest first; null before the records begin. */
  readonly months: readonly (number | null)[];
  /** The most that any size of the picture used in a month. */
  readonly most: number;
  readonly label: string;
};

/** Use by month as twelve bars; a month without use keeps its ground line, one without records has none. */
export function UseBars({ months, most, label }: UseBarsProps) {
  const bars = months.map((used, month) => {
    if (used === null) return "";
    const height = most === 0 ? 0 : (Math.max(0, used) / most) * HEIGHT;
    return `M${PITCH * month} ${HEIGHT + 1}v${-1 - height}h${WIDTH}v${1 + height}z`;
  });
  return (
    <svg
      className={styles.bars}
      viewBox={`0 0 ${PITCH * months.length} ${HEIGHT + 1}`}
      preserveAspectRatio="xMinYMax meet"
      role="img"
      aria-label={label}
    >
      <path className={styles.bar} d={bars.join("")} />
    </svg>
  );
}
