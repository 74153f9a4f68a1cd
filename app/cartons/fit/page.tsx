import type { Metadata } from "next";
import { formatLength, micrometres } from "#lib/units/length";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import { styleFrom } from "../../pack/style-from";
import { draftQuery } from "../../recipes/[id]/draft/draft-choice";
import { readCartonShelf } from "../read-carton-shelf";
import styles from "./_parts/fit.module.css";
import { FitChoices } from "./_parts/fit-choices";
import { FitForm } from "./_parts/fit-form";
import { askedFit } from "./asked-fit";
import { fitAnswer } from "./fit-answer";
import { fitFinding } from "./fit-finding";

export const metadata: Metadata = { title: "Find a carton" };

type FitPageProps = {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** Three sizes typed, at most three cartons answered. */
export default async function FitPage({ searchParams }: FitPageProps) {
  const now = await shopNow();
  const query = draftQuery(await searchParams);
  const shelf = await readCartonShelf(now);
  const { shop } = now;
  const read = askedFit(query, shop.measures);
  const answer = read.kind === "asked" ? fitAnswer(read.asked, shelf, styleFrom(shop.defaultStyle)) : null;
  const isWeighed = read.kind !== "asked" || read.asked.massMg !== null;
  const names = new Map(shelf.cartons.map(({ id, name }) => [id, name]));
  const nameOf = (id: string) => names.get(id) ?? id;
  const { fillName = null, notKnown = [] } = (answer && shelf.termsIn(answer.style)) ?? {};
  const unpriced = new Set(shelf.cartons.flatMap(({ id, value }) => (value === null ? [id] : [])));
  const isPriced = (id: string) => !unpriced.has(id);
  const problems = new Map(read.kind === "unreadable" ? Object.entries(read.problems) : []);
  const usual = formatLength(micrometres(Math.round(shelf.habits.cushionUm.usual)), shop.measures);
  return (
    <Page
      width="narrow"
      finding={fitFinding(answer, nameOf)}
      aside={`${isWeighed ? "Cheapest in all: carton, fill, tape and postage." : "Cheapest by carton, fill and tape. Postage is left out, as no weight is written: with it another may be cheaper."} Pieces stand with the cushion free on every side, edges along the carton.`}
    >
      <FitForm typed={(name) => query[name] ?? ""} problems={problems} usualCushion={usual} />
      {answer?.kind === "answered" ? (
        <FitChoices answer={answer} nameOf={nameOf} isPriced={isPriced} shop={shop} />
      ) : null}
      {answer?.kind === "no-fill" ? (
        <p>
          On {answer.style} nothing on the shelf fills a void: give a supply its material and sizes.{" "}
          <ButtonLink href="/supplies">Supplies</ButtonLink>
        </p>
      ) : null}
      {answer?.kind === "answered" ? (
        <p className={styles.small}>
          Packed on {answer.style}, {formatLength(micrometres(answer.cushionUm), shop.measures)} of cushion on
          every side{fillName === null ? "" : `, filled with ${fillName}`}.{" "}
          {isWeighed
            ? "Postage is what is expected over your zones and a guess of how far the weight strays. "
            : ""}
          {notKnown.length === 0 ? "" : `Not written down, so counted as nothing: ${notKnown.join(", ")}. `}
          It does not certify that the package protects its contents: send a test parcel, and mind the
          carrier's own rules.
        </p>
      ) : null}
      <p>
        <ButtonLink href="/cartons" tone="plain">
          Back to the cartons
        </ButtonLink>
      </p>
    </Page>
  );
}
