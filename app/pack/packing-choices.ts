import type { DraftSupply } from "#lib/packing/draft-supply";
import type { CushionStyle, RecipeVersion } from "#lib/packing/recipe-version";
import type { KnownWeights } from "#lib/packing/weight/known-weights";
import type { WeightStep } from "#lib/packing/weight/weight-band";
import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { Measures } from "#lib/units/measures";
import type { UseUnit } from "#lib/units/use-unit";
import type { Substitute } from "#prisma/records/substitutes";
import type { StepPrices } from "./step-prices";
import type { UseFirstOffer } from "./use-first-offers";

export type SupplyChoice = {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly unit: UseUnit;
  /** Milligrams of one use unit; null where nobody weighed it. */
  readonly massMg: number | null;
  /** A carton's inside sizes as shown: "12 × 9 × 8". */
  readonly sizes: string | null;
  /** Null: never counted. */
  readonly onHand: Amount | null;
  /** What it is as a wrap or fill; null where that was never said, and for cartons. */
  readonly draft: DraftSupply | null;
};

export type ItemTypeChoice = {
  readonly id: string;
  readonly name: string;
  readonly massMg: number | null;
  /** Parcels that held it among the recent ones. */
  readonly recent: number;
};

/** What was chosen last for an item type. */
export type LikelyChoice = {
  readonly itemTypeId: string;
  readonly pieces: number;
  readonly style: CushionStyle;
  readonly cartonId: string | null;
  readonly zoneId: string | null;
};

/** All that the packing desk needs to know about the shop, as plain values. */
export type PackingChoices = {
  /** The shop's day when the screen was read, and the zone it is reckoned in. */
  readonly today: Day;
  readonly timeZone: string;
  readonly measures: Measures;
  readonly currency: string;
  readonly minorDigits: number;
  readonly defaultStyle: CushionStyle;
  /** Most packed first. */
  readonly itemTypes: readonly ItemTypeChoice[];
  readonly supplies: readonly SupplyChoice[];
  readonly zones: readonly { readonly id: string; readonly name: string }[];
  readonly recipes: readonly RecipeVersion[];
  readonly likely: readonly LikelyChoice[];
  /** The shop's own rules for what stands in for what. */
  readonly substitutes: readonly Substitute[];
  /** Cartons to use up first, with what goes in them. */
  readonly useFirst: readonly UseFirstOffer[];
  /** What past parcels say about weights. */
  readonly weights: KnownWeights;
  /** Weight steps of the rate card that holds today; none where the shop has no card. */
  readonly steps: readonly WeightStep[];
  /** What buying a use unit of a supply again costs, 1/10,000 minor unit; none where no price is known. */
  readonly unitPrices: Readonly<Record<string, number>>;
  /** What parcels pay by weight; null without a rate card. */
  readonly stepPrices: StepPrices | null;
  /** Share of parcels that should stay within a promised band. */
  readonly promiseShare: number;
  /** Newest line of the ledger that is in these choices; 0 for none. */
  readonly newestLine: number;
};
