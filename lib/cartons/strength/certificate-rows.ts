import type { CartonWall } from "#lib/cartons/strength/carton-rating";

/** One row of the box maker's certificate: what board of this grade may at most hold. */
export type CertificateRow = {
  readonly wall: CartonWall;
  readonly grossPounds: number;
  readonly unitedInches: number;
  /** burst strength, or null for triple wall */
  readonly burstPsi: number | null;
  /** puncture units of triple wall, or null */
  readonly punctureUnits: number | null;
  /** weight of all facings, pounds a thousand square feet */
  readonly facingPounds: number;
  readonly poundsPerInch: number;
  /** whether the pairing of edge crush with this row was read, or comes from memory */
  readonly edgeCrushFrom: "read" | "memory";
};

type Figures = readonly [
  grossPounds: number,
  unitedInches: number,
  strength: number,
  facingPounds: number,
  poundsPerInch: number,
  edgeCrushFrom?: "memory",
];

const SINGLE: readonly Figures[] = [
  [20, 40, 125, 52, 23],
  [35, 50, 150, 66, 26],
  [50, 60, 175, 75, 29],
  [65, 75, 200, 84, 32],
  [80, 85, 250, 111, 40, "memory"],
  [95, 95, 275, 138, 44],
  [120, 105, 350, 180, 55, "memory"],
];
const DOUBLE: readonly Figures[] = [
  [80, 85, 200, 92, 42],
  [100, 95, 275, 110, 48],
  [120, 105, 350, 126, 51],
  [140, 110, 400, 180, 61],
  [160, 115, 500, 222, 71],
  [180, 120, 600, 270, 82, "memory"],
];
const TRIPLE: readonly Figures[] = [
  [240, 110, 700, 168, 67, "memory"],
  [260, 115, 900, 222, 80, "memory"],
  [280, 120, 1100, 264, 90, "memory"],
  [300, 125, 1300, 360, 112, "memory"],
];

/**
 * The rows of the certificate, by wall and from the weakest up. They are the freight classification's, made for claims;
 * posts take them as a guide to strength. A row holds only where both its limits do.
 *
 * @see freight classification item 222 and rule 41, checked in tests/reference/carton-strength.test.ts
 */
export const CERTIFICATE_ROWS: readonly CertificateRow[] = [
  ...SINGLE.map((figures) => row("single", figures)),
  ...DOUBLE.map((figures) => row("double", figures)),
  ...TRIPLE.map((figures) => row("triple", figures)),
];

function row(wall: CartonWall, figures: Figures): CertificateRow {
  const [grossPounds, unitedInches, strength, facingPounds, poundsPerInch, from] = figures;
  return {
    wall,
    grossPounds,
    unitedInches,
    burstPsi: wall === "triple" ? null : strength,
    punctureUnits: wall === "triple" ? strength : null,
    facingPounds,
    poundsPerInch,
    edgeCrushFrom: from ?? "read",
  };
}
