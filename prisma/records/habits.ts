import { z } from "zod";
import { type Habits, USUAL_HABITS } from "#lib/packing/habits";
import { MATERIALS } from "#lib/packing/material";
import { type Database, inTransaction } from "../client";

const SHOP_ID = "shop";
/** Raised when habits are written in another way. */
const EDITION = 1;

const atLeastZero = z.number().min(0);
const aboveZero = z.number().positive();
const layers = z.int().min(0);
const byMaterial = <T extends z.ZodType>(value: T) => z.partialRecord(z.enum(MATERIALS), value);
const manner = z.enum(["firm", "loose"]);

const habitsForm = z.strictObject({
  layers: byMaterial(layers),
  guardLayers: z.int().min(1),
  outerLayers: layers,
  overlapUm: aboveZero,
  endMarginUm: atLeastZero,
  rimWidthUm: aboveZero,
  cushionUm: z.strictObject({ sturdy: atLeastZero, usual: atLeastZero, thin: atLeastZero }),
  heavyFromMg: aboveZero,
  boxGapUm: atLeastZero,
  hollowShare: z.number().min(0).max(1),
  hollowManner: manner,
  hollowTissue: atLeastZero,
  fillManner: manner,
  bulkUm: z.strictObject({ firm: byMaterial(aboveZero), loose: byMaterial(aboveZero) }),
  looseOverfill: z.number().min(1),
  strips: z.strictObject({ perWrap: layers, perGuard: layers, lengthUm: aboveZero }),
  closing: z.enum(["single", "doubled-bottom", "h"]),
  legs: z.strictObject({ centreUm: atLeastZero, edgeUm: atLeastZero }),
  tapeFactor: aboveZero,
  boardPoundsPerSquareFoot: aboveZero,
  papersMg: z.int().min(0),
});

const habitsText = z.strictObject({ edition: z.literal(EDITION), own: z.record(z.string(), z.unknown()) });

/** Part of a value: of an object the members that differ, null for one that is left out. */
type Part = unknown;

/**
 * How the shop packs: what it said itself, and common practice for the rest.
 *
 * @throws Error if what is kept can't be read; it names the habit
 */
export async function habitsOf(db: Database): Promise<Habits> {
  const row = await db.shop.findUnique({ where: { id: SHOP_ID }, select: { habits: true } });
  if (row === null || row.habits === null) return USUAL_HABITS;
  const read = habitsForm.safeParse(withOwn(USUAL_HABITS, parsed(row.habits)));
  if (!read.success) {
    throw new Error(`The shop's packing habits can't be read: ${z.prettifyError(read.error)}`);
  }
  return read.data as Habits;
}

/**
 * Keeps how the shop packs: only what differs from common practice, so that better practice reaches it.
 *
 * @throws Error if a habit is out of its range; it names the habit
 * @throws RangeError before the shop is set up
 */
export async function saveHabits(db: Database, habits: Habits): Promise<void> {
  const read = habitsForm.safeParse(habits);
  if (!read.success) throw new Error(`These packing habits can't be kept: ${z.prettifyError(read.error)}`);
  const own = ownPart(USUAL_HABITS, habits);
  const text = own === undefined ? null : JSON.stringify({ edition: EDITION, own });
  const { count } = await inTransaction(db, (tx) =>
    tx.shop.updateMany({ where: { id: SHOP_ID }, data: { habits: text } }),
  );
  if (count === 0) throw new RangeError("saveHabits requires a shop that is set up, got none");
}

function parsed(text: string): Part {
  try {
    return habitsText.parse(JSON.parse(text)).own;
  } catch (error) {
    throw new Error("The shop's packing habits are no text of this program", { cause: error });
  }
}

/** What differs from the usual; undefined where nothing does. */
function ownPart(usual: Part, own: Part): Part {
  if (!isObject(usual) || !isObject(own)) return usual === own ? undefined : own;
  const names = new Set([...Object.keys(usual), ...Object.keys(own)]);
  const parts = [...names].flatMap((name): [string, Part][] => {
    const part = name in own ? ownPart(usual[name], own[name]) : null;
    return part === undefined ? [] : [[name, part]];
  });
  return parts.length === 0 ? undefined : Object.fromEntries(parts);
}

function withOwn(usual: Part, own: Part): Part {
  if (!isObject(usual) || !isObject(own)) return own;
  const merged = { ...usual };
  for (const [name, part] of Object.entries(own)) {
    if (part === null) delete merged[name];
    else merged[name] = withOwn(usual[name], part);
  }
  return merged;
}

function isObject(value: Part): value is Record<string, Part> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
