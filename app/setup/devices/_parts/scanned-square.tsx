import { encode } from "uqr";
import styles from "./devices.module.css";

/** ISO/IEC 18004: four light modules round the square. */
const QUIET_MODULES = 4;

/** An address as a QR code (ISO/IEC 18004), for the camera of a phone. */
export function ScannedSquare({ address, label }: { readonly address: string; readonly label: string }) {
  const { data, size } = encode(address, { border: QUIET_MODULES });
  const dark = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg
      className={styles.square}
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <path d={dark.join("")} />
    </svg>
  );
}
