import Link from "next/link";
import { AGEING_WORDS, movingWords } from "../ageing-words";
import type { ShelfCarton } from "../shelf-carton";
import { CartonOutline, outlineReach } from "./carton-outline";
import styles from "./cartons.module.css";
import { UseBars } from "./use-bars";
import { UseFirst } from "./use-first";

/** Every size to the same scale, with its use by month and how it moves. */
export function CartonFigures({ cartons }: { readonly cartons: readonly ShelfCarton[] }) {
  const reaches = cartons.map(({ inside }) => outlineReach(inside));
  const frame = {
    acrossUm: Math.max(...reaches.map(({ acrossUm }) => acrossUm)),
    upUm: Math.max(...reaches.map(({ upUm }) => upUm)),
  };
  const most = Math.max(0, ...cartons.flatMap(({ months }) => months.map((used) => used ?? 0)));
  return (
    <ul className={styles.figures}>
      {cartons.map((carton) => {
        const { id, name, inside, months, idle, supply } = carton;
        const year = Math.round(idle.use.in365Days);
        return (
          <li key={id} className={styles.figure}>
            <CartonOutline block={inside} frame={frame} label={`${name}, drawn to scale`} />
            <p className={styles.name}>
              <Link href={`/cartons/${encodeURIComponent(id)}`}>{name}</Link>{" "}
              <span className={styles[idle.ageing]}>{AGEING_WORDS[idle.ageing]}</span>
            </p>
            <UseBars
              months={months}
              most={most}
              label={`${year} used in the last year, month by month; ${months.at(-1) ?? 0} in the last one`}
            />
            <p className={styles.small}>{movingWords(carton)}</p>
            <UseFirst cartonId={id} name={name} isFirst={supply.useFirst} />
          </li>
        );
      })}
    </ul>
  );
}
