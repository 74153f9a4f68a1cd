import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { ButtonLink } from "../../_parts/button-link";
import { FollowsRecords } from "../../_parts/follows-records";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import styles from "../_parts/paper-or-bubble.module.css";
import { WhatIfForm } from "../_parts/what-if-form";
import { bubbleFirst } from "../bubble-first";
import { kindName } from "../kind-words";
import { leavesOut } from "../leaves-out";
import { readCompared } from "../read-compared";
import { triedSupplies } from "../tried-supplies";
import { whyWords } from "../why-words";
import { SideBySide } from "./_parts/side-by-side";
import { WhereItTurns } from "./_parts/where-it-turns";
import { askedPieces } from "./asked-pieces";
import { kindDetail } from "./kind-detail";
import { kindFinding } from "./kind-finding";

export const metadata: Metadata = { title: "Paper or bubble" };

type KindPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** One kind of parcel: all ways side by side, why one wins, and where the choice turns. */
export default async function KindPage({ params, searchParams }: KindPageProps) {
  const now = await shopNow();
  const { shop } = now;
  const { id } = await params;
  const { ground, query, asked, answer, shownNow } = await readCompared(now, await searchParams);
  const itemType = ground.itemTypes.find((each) => each.id === decodeURIComponent(id));
  if (itemType === undefined) notFound();
  const pieces = askedPieces(query["pieces"]);
  const parcel = [{ itemTypeId: itemType.id, pieces: pieces.count }];
  const detail = kindDetail(parcel, ground, answer);
  const { kind } = detail;
  const tried = bubbleFirst(triedSupplies([{ ...kind, parcels: 1 }], ground.supplies));
  const [nearest] = kind.comparisons;
  const address = encodeURIComponent(itemType.id);
  return (
    <Page
      finding={kindFinding(
        kindName(parcel, () => itemType.name),
        kind,
        shop,
      )}
      aside={nearest === undefined ? undefined : whyWords(nearest, shop)}
      actions={
        <>
          <ButtonLink href={`/recipes/${address}`}>Its cards</ButtonLink>
          <ButtonLink href="/paper-or-bubble" tone="plain">
            All that you send
          </ButtonLink>
        </>
      }
    >
      <FollowsRecords version={now.version} />
      {pieces.problem === null ? null : <p role="alert">{pieces.problem}</p>}
      {nearest === undefined ? (
        <p>
          {kind.costs.length === 0 ? "There is no card yet." : "There is a card in one style alone."}{" "}
          <Link href={`/recipes/${address}/draft`}>Have one drafted</Link>
        </p>
      ) : (
        <WhatIfForm
          action={`/paper-or-bubble/${address}`}
          kept={pieces.count === 1 ? {} : { pieces: String(pieces.count) }}
          {...{ tried, ground, query, asked, shownNow }}
        />
      )}
      <SideBySide
        kind={kind}
        ground={ground}
        replacement={answer.terms.replacement}
        without={leavesOut({ ...answer, kinds: [kind], untold: [], single: [], unseen: 0 }, ground)}
        shop={shop}
      />
      <WhereItTurns detail={detail} tried={tried} replacement={answer.terms.replacement} shop={shop} />
      <p className={styles.small}>
        An estimate of cost. It does not certify that a package protects its contents: send a test parcel
        before you change how you pack, and mind the carrier’s own rules.
      </p>
    </Page>
  );
}
