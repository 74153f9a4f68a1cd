import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { askedCushion } from "#lib/packing/piece/asked-cushion";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { formatLength, micrometres } from "#lib/units/length";
import { habitsOf } from "#prisma/records/habits";
import { ButtonLink } from "../../../_parts/button-link";
import { Page } from "../../../_parts/page";
import { shopNow } from "../../../_parts/shop-now";
import styles from "./_parts/draft.module.css";
import { DraftColumn } from "./_parts/draft-column";
import { DraftOptions } from "./_parts/draft-options";
import { draftQuery } from "./draft-choice";
import { readDraft } from "./read-draft";

export const metadata: Metadata = { title: "Draft a card" };

const GUESS =
  "Drafted from the sizes of the piece and how packing is commonly done: a guess until you have packed and weighed one. It does not certify that a package protects its contents; send a test parcel.";

type DraftPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** A first card in each cushion style, from the description of the piece and what is on the shelf. */
export default async function DraftPage({ params, searchParams }: DraftPageProps) {
  const now = await shopNow();
  const { id } = await params;
  const query = draftQuery(await searchParams);
  const ground = await readDraft(now, id, query);
  if (ground === null) notFound();
  const { itemType, piece, reading, shelf } = ground;
  if (piece === null) {
    return (
      <Page
        width="narrow"
        finding={`${itemType.name} was not described yet.`}
        aside="A card is drafted from the sizes of the piece: describe it first."
        actions={
          <ButtonLink href={`/recipes/${id}#piece`} tone="primary">
            Describe the piece
          </ButtonLink>
        }
      />
    );
  }
  const asked = askedCushion(piece, await habitsOf(now.db));
  const first = CUSHION_STYLES.filter((style) => style === query["style"]);
  const order = [...first, ...CUSHION_STYLES.filter((style) => !first.includes(style))];
  const pieces = reading.kind === "choice" ? reading.choice.pieces : 1;
  return (
    <Page
      finding={`${itemType.name}: a first card on paper, on bubble and mixed.`}
      aside={GUESS}
      actions={
        <>
          <ButtonLink href={`/recipes/${id}`}>Back to the recipe</ButtonLink>
          <ButtonLink href="/recipes/habits">How you pack</ButtonLink>
        </>
      }
    >
      <DraftOptions
        ground={ground}
        query={query}
        usualCushion={formatLength(micrometres(Math.round(asked)), now.shop.measures)}
      />
      {shelf.undescribed.length === 0 ? null : (
        <p className={styles.small}>
          Not drafted with, as their material or sizes are not written down:{" "}
          {shelf.undescribed.map((supply, index) => (
            <span key={supply.id}>
              {index === 0 ? "" : ", "}
              <Link href={`/supplies/${supply.id}`}>{supply.name}</Link>
            </span>
          ))}
          .
        </p>
      )}
      <div className={styles.columns}>
        {order.map((style) => {
          const draft = ground.draftOf(style);
          return draft === null ? null : (
            <DraftColumn
              key={style}
              style={style}
              draft={draft}
              ground={ground}
              query={query}
              pieces={pieces}
              shop={now.shop}
              today={now.today}
            />
          );
        })}
      </div>
    </Page>
  );
}
