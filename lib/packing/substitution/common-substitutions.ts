import type { SubstitutionRule } from "#lib/packing/substitution/substitution-rule";

const PRACTICE = "common practice, no source";
const MEMORY = "from memory";

const rule = (
  job: SubstitutionRule["job"],
  from: SubstitutionRule["from"],
  to: SubstitutionRule["to"],
  ratio: number,
  measure: SubstitutionRule["measure"],
  reason: SubstitutionRule["reason"],
  cautions: SubstitutionRule["cautions"] = [],
  source: string = PRACTICE,
): SubstitutionRule => ({ job, from, to, ratio, measure, reason, cautions, source });

/**
 * The stand-ins that a new shop begins with, the better one first for each material. A shop adds its own. Where one
 * layer of large bubble goes for two to three of small, the middle is taken.
 */
export const COMMON_SUBSTITUTIONS: readonly SubstitutionRule[] = [
  rule("surface", "tissue", "packing-paper", 1, "area", "same-area"),
  rule("surface", "tissue", "foam", 1, "area", "same-area"),
  rule("surface", "tissue", "gift-wrap", 1, "area", "same-area", ["dyes-may-run"]),
  rule("surface", "packing-paper", "tissue", 2, "area", "more-layers"),

  rule("shock", "small-bubble", "foam", 2, "area", "more-layers"),
  rule("shock", "small-bubble", "large-bubble", 0.5, "area", "fewer-layers", ["prints-on-surfaces"], MEMORY),
  rule("shock", "small-bubble", "packing-paper", 4, "area", "more-layers", ["heavier", "mats-down"]),
  rule("shock", "small-bubble", "kraft", 1, "area", "snag-guard-only", ["no-shock-taken"]),
  rule("shock", "large-bubble", "small-bubble", 2.5, "area", "more-layers", [], MEMORY),
  rule("shock", "large-bubble", "foam", 5, "area", "more-layers"),
  rule("shock", "large-bubble", "packing-paper", 8, "area", "more-layers", ["heavier", "mats-down"]),
  rule("shock", "foam", "small-bubble", 0.5, "area", "fewer-layers", ["prints-on-surfaces"]),
  rule("shock", "packing-paper", "small-bubble", 0.25, "area", "fewer-layers", ["prints-on-surfaces"]),
  rule("shock", "packing-paper", "gift-wrap", 1, "area", "same-area", ["dyes-may-run"]),

  rule("brace", "card", "small-bubble", 2, "area", "more-layers", ["springs-back"]),
  rule("brace", "card", "packing-paper", 6, "area", "more-layers", ["heavier"]),
  rule("brace", "kraft", "gift-wrap", 1, "area", "same-area", ["dyes-may-run"]),
  rule("brace", "kraft", "packing-paper", 2, "area", "more-layers", ["heavier"]),

  rule("bind", "household-tape", "stretch-film", 1, "length", "same-length", ["not-on-bare-surface"]),
  rule("bind", "household-tape", "rubber-band", 0.5, "count", "one-for-one", ["not-on-bare-surface"]),
  rule("bind", "household-tape", "paper-tape", 1, "length", "same-length", ["not-on-bare-surface"]),

  rule("fill", "packing-paper", "gift-wrap", 1, "volume", "same-volume"),
  rule("fill", "packing-paper", "kraft", 1, "volume", "same-volume", ["scratches-bare-surfaces"]),
  rule("fill", "packing-paper", "large-bubble", 1, "volume", "same-volume", ["springs-back"]),
  rule("fill", "packing-paper", "loose-fill", 1, "volume", "same-volume"),
  rule("fill", "packing-paper", "small-bubble", 1, "volume", "same-volume", ["springs-back"]),
  rule("fill", "large-bubble", "small-bubble", 1, "volume", "same-volume", ["springs-back"]),
  rule("fill", "large-bubble", "packing-paper", 1, "volume", "same-volume", ["heavier", "mats-down"]),
  rule("fill", "large-bubble", "loose-fill", 1, "volume", "same-volume"),
  rule("fill", "large-bubble", "gift-wrap", 1, "volume", "same-volume", ["heavier", "mats-down"]),
  rule("fill", "small-bubble", "large-bubble", 1, "volume", "same-volume", ["springs-back"]),
  rule("fill", "small-bubble", "packing-paper", 1, "volume", "same-volume", ["heavier", "mats-down"]),
  rule("fill", "loose-fill", "packing-paper", 1, "volume", "same-volume", ["heavier"]),
  rule("fill", "loose-fill", "large-bubble", 1, "volume", "same-volume", ["springs-back"]),
  rule("fill", "loose-fill", "gift-wrap", 1, "volume", "same-volume", ["heavier"]),
  rule("fill", "tissue", "packing-paper", 1, "volume", "same-volume"),
  rule("fill", "tissue", "gift-wrap", 1, "volume", "same-volume", ["dyes-may-run"]),

  rule("seal", "carton-tape", "paper-tape", 1, "length", "same-length"),
  rule("seal", "paper-tape", "carton-tape", 1, "length", "same-length"),
];
