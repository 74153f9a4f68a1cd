import type { PieceBody, StickingOut } from "#lib/packing/piece/piece";
import { MICROMETRES_PER_INCH } from "#lib/units/length";
import type { PieceDescription } from "#prisma/records/item-type-piece";

type DemoPiece = Partial<Omit<PieceDescription, "body">> & Pick<PieceDescription, "body">;

/** How the pieces of the demo shop look: all sizes are invented. */
export const DEMO_PIECES: Readonly<Record<string, PieceDescription>> = {
  mug: piece({ body: round(3.125, 3.75), hollows: [hollow(0.8)], stickingOut: [handle(1.25, 2.75)] }),
  "mug-pair": piece({
    body: round(3.125, 7.75),
    hollows: [hollow(0.8)],
    stickingOut: [handle(1.25, 2.75), handle(1.25, 2.75)],
  }),
  bowl: piece({ body: round(7.75, 3.5), hollows: [hollow(0.75)] }),
  vase: piece({ body: round(5, 9.75), hollows: [hollow(0.8)], rims: 2 }),
  "lamp-chimney": piece({ body: round(3.25, 8.5), hollows: [hollow(0.95)], rims: 2, frailty: "thin" }),
  "framed-tile": piece({
    body: { kind: "flat", acrossUm: um(7.5), longUm: um(7.5), thickUm: um(0.75) },
  }),
  "mantel-clock": piece({
    body: { kind: "box", lengthUm: um(9), widthUm: um(4.5), heightUm: um(5) },
    hollows: [hollow(0.4)],
    thisSideUp: true,
  }),
};

function um(inches: number): number {
  return Math.round(inches * MICROMETRES_PER_INCH);
}

function round(across: number, high: number): PieceBody {
  return { kind: "cylinder", acrossUm: um(across), heightUm: um(high) };
}

function hollow(share: number): PieceDescription["hollows"][number] {
  return { kind: "share", share };
}

function handle(out: number, along: number): StickingOut {
  return { part: "handle", where: "right", outUm: um(out), alongUm: um(along) };
}

/** With what was typed, so that the form shows it again. */
function piece(described: DemoPiece): PieceDescription {
  const whole = {
    hollows: [],
    stickingOut: [],
    rims: 0 as const,
    lid: null,
    thisSideUp: false,
    frailty: "usual" as const,
    ...described,
  };
  const shares = whole.hollows.flatMap((each) => (each.kind === "share" ? [`${each.share * 100} %`] : []));
  const [share] = shares;
  const parts = whole.stickingOut.flatMap(({ outUm, alongUm }, row): [string, string][] => [
    [`stickingOut.${row}.outUm`, inchesText(outUm)],
    [`stickingOut.${row}.alongUm`, inchesText(alongUm)],
  ]);
  const typed = {
    ...Object.fromEntries(parts),
    ...(share === undefined ? {} : { "hollows.0.share": share }),
  };
  return { ...whole, typed };
}

function inchesText(size: number): string {
  return `${size / MICROMETRES_PER_INCH} in`;
}
