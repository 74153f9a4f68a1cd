import type { Block } from "#lib/packing/block";
import styles from "./cartons.module.css";

/** How much of the width is drawn going back, and how much of that goes up: an oblique drawing. */
const BACK = 0.35;
const UP = 0.25;

type CartonOutlineProps = {
  readonly block: Block;
  /** Micrometres of the largest outline of the picture, across and up; all are drawn to this scale. */
  readonly frame: { readonly acrossUm: number; readonly upUm: number };
  readonly label: string;
};

/** How far an outline reaches, in micrometres. */
export function outlineReach({ lengthUm, widthUm, heightUm }: Block): CartonOutlineProps["frame"] {
  return { acrossUm: lengthUm + BACK * widthUm, upUm: heightUm + UP * widthUm };
}

/** A carton as lines, to the same scale as its neighbours and standing on the same ground. */
export function CartonOutline({ block, frame, label }: CartonOutlineProps) {
  const { lengthUm, widthUm, heightUm } = block;
  const unit = frame.acrossUm / 100;
  const [length, height] = [lengthUm / unit, heightUm / unit];
  const [back, up] = [(BACK * widthUm) / unit, (UP * widthUm) / unit];
  const ground = frame.upUm / unit;
  const top = ground - height;
  const seam = top - up / 2;
  return (
    <svg className={styles.outline} viewBox={`-1 -1 102 ${ground + 2}`} role="img" aria-label={label}>
      <path
        className={styles.face}
        d={`M0 ${top}h${length}v${height}h${-length}z M0 ${top}l${back} ${-up}h${length}l${-back} ${up} M${length} ${ground}l${back} ${-up}v${-height}`}
      />
      <path className={styles.seam} d={`M${back / 2} ${seam}h${length}`} />
    </svg>
  );
}
