import { z } from "zod";
import type { TrialTerms } from "#lib/replenishment/trial/trial-shop";
import type { Shop } from "#prisma/records/shop";
import { problemsOf } from "../../_parts/form-state";
import { type Promised, promiseValue } from "../promise";
import { shopForm } from "../shop-form";

/** The settings that a trial changes, as the shop keeps them. */
export type TrialSettings = {
  readonly promise: Promised;
  readonly coverWeeks: number;
  readonly reviewDays: number;
};

/** What the address asks: nothing, settings to try, or something that can't be read. */
export type TrialReading =
  | { readonly kind: "none" }
  | { readonly kind: "settings"; readonly settings: TrialSettings; readonly over: "coming" | "past" }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Record<string, string>> };

/** Parameters of an address as the framework hands them over. */
export type Query = Readonly<Record<string, string | string[] | undefined>>;

/** What the fields are called. */
export const TRIAL_LABELS = {
  promise: "Of each supply you want to",
  coverWeeks: "An order should last, weeks",
  reviewDays: "You look at the shelf every so many days",
  over: "Played over",
} as const;

/** Parameters of the address that ask for a trial. */
const NAMES: readonly string[] = Object.keys(TRIAL_LABELS);

const WHOLE = 1_000;
const { promise, coverWeeks, reviewDays } = shopForm.shape;

/** Settings to try, with the limits that the shop's own have. */
export const trialForm = z.object({ promise, coverWeeks, reviewDays });

const query = trialForm.extend({
  over: z.enum(["coming", "past"], "Choose the coming weeks or the past year.").default("coming"),
});

/**
 * The settings of a shop that a trial holds others against.
 *
 * @param shop the shop as set up
 */
export function settingsOf(shop: Shop): TrialSettings {
  return {
    promise: { goal: shop.goal, perMille: shop.servicePerMille },
    coverWeeks: shop.coverWeeks,
    reviewDays: shop.reviewDays,
  };
}

/**
 * Reads the settings to try of an address: `?promise=cycles:950&coverWeeks=6&reviewDays=14&over=coming`. What is not
 * said is as the shop has it.
 *
 * @param asked parameters of the address
 * @param present the shop's own settings
 * @returns the settings, or what is wrong by field with the way out
 * @example readTrial({ reviewDays: "14" }, present) // as the shop's, but looking every 14 days
 */
export function readTrial(asked: Query, present: TrialSettings): TrialReading {
  if (NAMES.every((name) => asked[name] === undefined)) return { kind: "none" };
  const read = query.safeParse({ ...typedSettings(present), ...asked });
  if (!read.success) return { kind: "unreadable", problems: problemsOf(read.error) };
  const { over, ...settings } = read.data;
  return { kind: "settings", settings, over };
}

/** Settings as the form's fields hold them. */
export function typedSettings(settings: TrialSettings) {
  return {
    promise: promiseValue(settings.promise),
    coverWeeks: String(settings.coverWeeks),
    reviewDays: String(settings.reviewDays),
  };
}

/** Whether two settings are the same. */
export function areSame(one: TrialSettings, other: TrialSettings): boolean {
  return JSON.stringify(typedSettings(one)) === JSON.stringify(typedSettings(other));
}

/** Settings as the trial reckons with them. */
export function termsOfSettings({ promise: kept, ...rest }: TrialSettings): TrialTerms {
  return { ...rest, goal: { kind: kept.goal, level: kept.perMille / WHOLE } };
}

/** The label of a field by its name in the address. */
export function labelOf(name: string): string {
  return new Map<string, string>(Object.entries(TRIAL_LABELS)).get(name) ?? name;
}
