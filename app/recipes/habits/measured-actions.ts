"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import type { Calibration } from "#lib/packing/calibration/calibration";
import { countedFill } from "#lib/packing/calibration/counted-fill";
import { finishedRolls } from "#lib/packing/calibration/finished-rolls";
import { weighedUnit } from "#lib/packing/calibration/weighed-unit";
import { cartonTape } from "#lib/packing/carton-tape";
import { describedSupply } from "#lib/packing/described-supply";
import { unitArea } from "#lib/packing/unit-area";
import { unitLength } from "#lib/packing/unit-length";
import { unitsOf } from "#lib/units/amount";
import { MICROMETRES_PER_INCH } from "#lib/units/length";
import { formatMass, milligrams } from "#lib/units/mass";
import { habitsOf, saveHabits } from "#prisma/records/habits";
import { type Supply, saveSupply, suppliesOf } from "#prisma/records/supplies";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { shopNow } from "../../_parts/shop-now";
import { amountAboveZero, massTyped, tick, wholeNumber } from "../../_parts/typed-fields";

const GONE = "This supply is out of use meanwhile. Choose another one of the list.";
const MOST_ROLLS = 100;
const MOST_CARTONS = 9_999;

/** One empty carton was filled and counted: how far this fill goes. */
export async function keepFilled(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const typed = typedValues(form);
  const supplies = await suppliesOf(db);
  const carton = insideOf(supplies, typed["cartonId"]);
  const supply = supplies.find(({ id }) => id === typed["supplyId"]);
  if (carton === null)
    return refused(before, form, { cartonId: "Choose a carton with its three inside sizes." });
  if (supply === undefined) return refused(before, form, { supplyId: GONE });
  const read = z
    .object({ amount: amountAboveZero(supply.useUnit, shop.measures), sure: tick })
    .safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const described = describedSupply({ ...supply, bulkUm: null });
  const area = described.kind === "described" ? unitArea(described.supply) : null;
  if (described.kind !== "described" || area === null) {
    return refused(before, form, {
      supplyId: "Write its sizes and what it is made of on its own page first.",
    });
  }
  const habits = await habitsOf(db);
  const { material } = described.supply;
  const now = habits.bulkUm[habits.fillManner][material];
  if (now === undefined)
    return refused(before, form, { supplyId: "Nothing is known of this as fill. Choose paper or bubble." });
  const units = unitsOf(read.data.amount.amount);
  const found = countedFill({ inside: carton, units, unitArea: area }, now);
  const doubt = doubtOf(found, read.data.sure);
  if (doubt !== null) return refused(before, form, { sure: doubt });
  const manner = habits.fillManner;
  await saveHabits(db, {
    ...habits,
    bulkUm: { ...habits.bulkUm, [manner]: { ...habits.bulkUm[manner], [material]: found.value } },
  });
  revalidatePath("/recipes", "layout");
  return done(before, `Kept: ${supply.name} fills ${timesWords(found.ratio)} what was assumed.`);
}

/** Several use units were weighed at once: what one weighs. */
export async function keepWeighed(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const typed = typedValues(form);
  const supply = (await suppliesOf(db)).find(({ id }) => id === typed["supplyId"]);
  if (supply === undefined) return refused(before, form, { supplyId: GONE });
  const read = z
    .object({
      amount: amountAboveZero(supply.useUnit, shop.measures),
      mass: massTyped(shop.measures).refine(({ mg }) => mg > 0, "Write a weight above zero."),
      sure: tick,
    })
    .safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const weighed = { grossMg: read.data.mass.mg, trayMg: 0, units: unitsOf(read.data.amount.amount) };
  const found = weighedUnit(weighed, supply.massMg ?? weighed.grossMg / weighed.units);
  const doubt = doubtOf(found, read.data.sure);
  if (doubt !== null) return refused(before, form, { sure: doubt });
  const mass = milligrams(found.value);
  await saveSupply(db, { ...supply, massMg: mass, massTyped: null });
  revalidatePath("/", "layout");
  const words = formatMass(mass, shop.measures);
  return done(before, `Kept: one of ${supply.name} weighs ${words}.`);
}

/** Rolls of tape were finished: how much more is used than the pattern asks for. */
export async function keepFinished(before: FormState, form: FormData): Promise<FormState> {
  const { db } = await shopNow();
  const typed = typedValues(form);
  const supplies = await suppliesOf(db);
  const carton = insideOf(supplies, typed["cartonId"]);
  const tape = supplies.find(({ id }) => id === typed["supplyId"]);
  if (carton === null) return refused(before, form, { cartonId: "Choose a carton with its inside sizes." });
  const rollUm = tape === undefined ? null : rollLength(tape);
  if (rollUm === null) {
    return refused(before, form, {
      supplyId: "Write on its own page what a roll of it holds, in feet or metres.",
    });
  }
  const read = z
    .object({ rolls: wholeNumber(1, MOST_ROLLS), cartons: wholeNumber(1, MOST_CARTONS), sure: tick })
    .safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const habits = await habitsOf(db);
  const one = cartonTape({ ...carton, pattern: habits.closing }, habits.legs);
  const found = finishedRolls({ rolls: read.data.rolls, rollUm, theoryUm: one * read.data.cartons });
  const doubt = doubtOf(found, read.data.sure);
  if (doubt !== null) return refused(before, form, { sure: doubt });
  await saveHabits(db, { ...habits, tapeFactor: found.value });
  revalidatePath("/recipes", "layout");
  const inches = Math.round((one * found.value) / MICROMETRES_PER_INCH);
  return done(before, `Kept: ${timesWords(found.value)} the pattern, ${inches} in for such a carton.`);
}

function insideOf(supplies: readonly Supply[], id: string | undefined) {
  const carton = supplies.find((supply) => supply.id === id && supply.kind === "carton");
  if (carton === undefined) return null;
  const { lengthUm, widthUm, heightUm } = carton;
  return lengthUm === null || widthUm === null || heightUm === null ? null : { lengthUm, widthUm, heightUm };
}

function rollLength(tape: Supply): number | null {
  const whole = tape.fullAmount ?? tape.countAmount;
  const described = describedSupply({ ...tape, bulkUm: null });
  if (whole === null || described.kind !== "described") return null;
  const unit = unitLength(described.supply, 0);
  return typeof unit === "number" && unit > 0 ? unitsOf(whole) * unit : null;
}

/** Where a measure is far from the usual, the seller is asked before it is believed. */
function doubtOf({ kind, ratio }: Calibration, isSure: boolean): string | null {
  if (kind === "plausible" || isSure) return null;
  return `That is ${timesWords(ratio)} what is usual. Check the unit and the count; if it is right, tick this and keep it again.`;
}

function timesWords(ratio: number): string {
  return `${ratio < 10 ? ratio.toFixed(2) : ratio.toFixed(0)} times`;
}
