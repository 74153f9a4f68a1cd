import { cardSum, type SupplyTerms } from "#lib/packing/card-sum";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Recipe } from "#prisma/records/recipes";
import type { Shop } from "#prisma/records/shop";
import type { Supply } from "#prisma/records/supplies";
import { Section } from "../../../../_parts/section";
import { styleTitle } from "../../../style-title";
import { versionChanges } from "../version-changes";
import styles from "./changes.module.css";
import { VersionLine } from "./version-line";

type UnitCosts = ReadonlyMap<string, number | null>;

/** A version of a card, and what was on offer on its first day. */
export type DatedVersion = { readonly recipe: Recipe; readonly pricesThen: UnitCosts };

type VersionLinesProps = {
  readonly style: CushionStyle;
  /** of this style, oldest first */
  readonly versions: readonly DatedVersion[];
  readonly pieceMassMg: number | null;
  readonly supplies: ReadonlyMap<string, Supply>;
  readonly terms: SupplyTerms;
  /** packed by each version, by its id */
  readonly parcels: ReadonlyMap<string, number>;
  readonly shop: Shop;
};

/** All versions of the card of a style on a time line, the latest first. */
export function VersionLines(props: VersionLinesProps) {
  const { style, versions, pieceMassMg, supplies, terms, parcels, shop } = props;
  if (versions.length === 0) return null;
  const supplyOf = (supplyId: string) =>
    supplies.get(supplyId) ?? { name: supplyId, useUnit: "each" as const };
  const costOf = (recipe: Recipe, replacement: UnitCosts) =>
    cardSum(recipe, 1, pieceMassMg, { ...terms, replacement }).replacement;
  const lines = versions.map(({ recipe, pricesThen }, index) => {
    const earlier = versions[index - 1]?.recipe;
    return (
      <VersionLine
        key={recipe.id}
        recipe={recipe}
        number={index + 1}
        changes={earlier === undefined ? null : versionChanges(earlier, recipe, supplyOf)}
        costThen={costOf(recipe, pricesThen)}
        costNow={costOf(recipe, terms.replacement)}
        parcels={parcels.get(recipe.id) ?? 0}
        shop={shop}
      />
    );
  });
  return (
    <Section title={`${styleTitle(style)}: the versions of the card`} id={style}>
      <ol className={styles.line} reversed>
        {lines.toReversed()}
      </ol>
    </Section>
  );
}
