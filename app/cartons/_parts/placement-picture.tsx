import type { Placement } from "#lib/cartons/fit/placement";
import type { Block } from "#lib/packing/block";
import styles from "./cartons.module.css";

type PlacementPictureProps = { readonly inside: Block; readonly placement: Placement };

type Rectangle = { readonly x: number; readonly y: number; readonly across: number; readonly up: number };

/** Where the pieces stand in the carton: from above, and from the side. */
export function PlacementPicture({ inside, placement }: PlacementPictureProps) {
  const unit = Math.max(inside.lengthUm, inside.widthUm, inside.heightUm) / 100;
  // With room to spare the pieces stand in the middle; what is below and above them is cushion.
  const reach = (at: (piece: Placement[number]) => number) => Math.max(...placement.map(at));
  const from = (at: (piece: Placement[number]) => number) => Math.min(...placement.map(at));
  const alongBy =
    (inside.lengthUm -
      reach(({ alongUm, turned }) => alongUm + turned.lengthUm) -
      from(({ alongUm }) => alongUm)) /
    2;
  const acrossBy =
    (inside.widthUm -
      reach(({ acrossUm, turned }) => acrossUm + turned.widthUm) -
      from(({ acrossUm }) => acrossUm)) /
    2;
  const above = placement.map(
    ({ turned, alongUm, acrossUm }): Rectangle => ({
      x: (alongUm + alongBy) / unit,
      y: (acrossUm + acrossBy) / unit,
      across: turned.lengthUm / unit,
      up: turned.widthUm / unit,
    }),
  );
  const side = placement.map(
    ({ turned, alongUm, upUm }): Rectangle => ({
      x: (alongUm + alongBy) / unit,
      y: (inside.heightUm - upUm - turned.heightUm) / unit,
      across: turned.lengthUm / unit,
      up: turned.heightUm / unit,
    }),
  );
  const isOne = placement.length === 1;
  const where = (one: string, several: string) =>
    isOne
      ? `where the piece ${one} in the carton`
      : `where the ${placement.length} pieces ${several} in the carton`;
  return (
    <div className={styles.views}>
      <View
        words="From above"
        label={`From above: ${where("lies", "lie")}`}
        across={inside.lengthUm / unit}
        up={inside.widthUm / unit}
        pieces={above}
      />
      <View
        words="From the side"
        label={`From the side: ${where("stands", "stand")}`}
        across={inside.lengthUm / unit}
        up={inside.heightUm / unit}
        pieces={side}
      />
    </div>
  );
}

type ViewProps = {
  readonly words: string;
  readonly label: string;
  readonly across: number;
  readonly up: number;
  readonly pieces: readonly Rectangle[];
};

function View({ words, label, across, up, pieces }: ViewProps) {
  return (
    <figure className={styles.view}>
      <svg viewBox={`-1 -1 ${across + 2} ${up + 2}`} role="img" aria-label={label}>
        <rect className={styles.face} width={across} height={up} />
        {pieces.map((piece, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces keep their places in a placement
          <g key={at}>
            <rect className={styles.piece} x={piece.x} y={piece.y} width={piece.across} height={piece.up} />
            {pieces.length === 1 ? null : (
              <text className={styles.number} x={piece.x + piece.across / 2} y={piece.y + piece.up / 2}>
                {at + 1}
              </text>
            )}
          </g>
        ))}
      </svg>
      <figcaption>{words}</figcaption>
    </figure>
  );
}
