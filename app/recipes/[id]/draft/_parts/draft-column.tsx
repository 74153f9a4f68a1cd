import Link from "next/link";
import { cardSum } from "#lib/packing/card-sum";
import type { SmallestDraft } from "#lib/packing/recipe/smallest-draft";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import { formatMass } from "#lib/units/mass";
import type { Shop } from "#prisma/records/shop";
import { RecordForm } from "../../../../_parts/record-form";
import { Section } from "../../../../_parts/section";
import { costWords } from "../../../cost-words";
import { styleTitle } from "../../../style-title";
import { keepDraft } from "../actions";
import { type DraftQuery, draftAddress } from "../draft-choice";
import { acceptable, cartonWords, leftCushion, leftOutWords, refusalWords, tightWords } from "../draft-words";
import { keptDraft } from "../kept-draft";
import type { DraftGround } from "../read-draft";
import styles from "./draft.module.css";
import { DraftedSteps } from "./drafted-steps";

/** 50 lb, from which two should lift. */
const LIFT_WITH_HELP_FROM_MG = 22_679_618;

type DraftColumnProps = {
  readonly style: CushionStyle;
  readonly draft: SmallestDraft;
  readonly ground: DraftGround;
  readonly query: DraftQuery;
  readonly pieces: number;
  readonly shop: Shop;
  readonly today: Day;
};

/** The draft of one style: carton, steps, weight and cost, and a button that keeps it. */
export function DraftColumn(props: DraftColumnProps) {
  const { style, draft, ground, query, shop, today } = props;
  const { id } = ground.itemType;
  const nameOf = (supplyId: string) => ground.supplies.get(supplyId)?.name ?? supplyId;
  const tight = "tight" in draft ? draft.tight : [];
  const near = acceptable(tight);
  return (
    <Section title={styleTitle(style)} id={style} rule="strong">
      <p>
        {draft.kind === "drafted"
          ? cartonWords(draft, nameOf, shop.measures)
          : refusalWords(draft, nameOf, shop.measures)}
      </p>
      {near.map((each) => (
        <p key={each.cartonId} className={styles.small}>
          {tightWords(each, nameOf, shop.measures)}{" "}
          <Link
            className={styles.accept}
            href={draftAddress(id, query, {
              carton: each.cartonId,
              cushion: leftCushion(each.room.leavesUm, shop.measures),
            })}
          >
            Draft in it with {leftCushion(each.room.leavesUm, shop.measures)} all round
          </Link>
        </p>
      ))}
      {draft.kind === "no-carton" && near.length === 0
        ? tight.map((each) => (
            <p key={each.cartonId} className={styles.small}>
              {tightWords(each, nameOf, shop.measures)}
            </p>
          ))
        : null}
      {draft.kind === "drafted" ? <Drafted {...props} draft={draft} nameOf={nameOf} /> : null}
      {draft.kind === "drafted" ? (
        <RecordForm
          action={keepDraft.bind(null, { itemTypeId: id, style, query })}
          label={`Keep the ${style} card`}
          fields={[{ name: "effectiveFrom", label: "Holds from", kind: "day", value: today }]}
          submit={`Keep as the ${style} card`}
        />
      ) : null}
    </Section>
  );
}

type DraftedProps = DraftColumnProps & {
  readonly draft: Extract<SmallestDraft, { readonly kind: "drafted" }>;
  readonly nameOf: (supplyId: string) => string;
};

function Drafted({ style, draft, ground, pieces, shop, today, nameOf }: DraftedProps) {
  const { recipe } = draft;
  const { measures } = shop;
  const { terms, itemType } = ground;
  const version = keptDraft(recipe, { itemTypeId: itemType.id, style, effectiveFrom: today }, null);
  const sum = cardSum(version, pieces, itemType.massMg, terms);
  const leftOut = leftOutWords(recipe.leftOut);
  const { mg, unknown, guessed } = recipe.mass;
  return (
    <>
      <DraftedSteps steps={recipe.steps} nameOf={nameOf} />
      {leftOut === null ? null : <p className={styles.small}>{leftOut}</p>}
      <dl className={styles.sums}>
        <div>
          <dt>Weighs about</dt>
          <dd>{formatMass(mg, measures)}</dd>
        </div>
        <div>
          <dt>Material, bought again today</dt>
          <dd>{costWords(sum.replacement, shop)}</dd>
        </div>
        <div>
          <dt>Material, at its cost in the books</dt>
          <dd>{costWords(sum.book, shop)}</dd>
        </div>
      </dl>
      <p className={styles.small}>
        With {draft.outer === null ? "the carton" : "both cartons"} and some papers. Bought again: the
        cheapest pack on offer, without delivery.
        {unknown.length === 0 ? "" : ` Never weighed and left out: ${unknown.map(nameOrPiece).join(", ")}.`}
        {guessed.length === 0 ? "" : ` Reckoned from its board: ${guessed.map(nameOf).join(", ")}.`}
        {unpriced(sum.replacement.unknown, "no price on offer")}
        {unpriced(sum.book.unknown, "no cost in the books")}
      </p>
      {mg < LIFT_WITH_HELP_FROM_MG ? null : <p>Over 50 lb (23 kg): lift with help.</p>}
    </>
  );

  function nameOrPiece(id: string): string {
    return id === itemType.id ? "the piece itself" : nameOf(id);
  }

  function unpriced(ids: readonly string[], why: string): string {
    return ids.length === 0 ? "" : ` Left out, ${why}: ${ids.map(nameOf).join(", ")}.`;
  }
}
