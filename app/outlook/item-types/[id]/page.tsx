import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { itemTypesOf } from "#prisma/records/item-types";
import { SubjectScreen } from "../../_parts/subject-screen";
import { outlookNow } from "../../outlook-now";
import { itemTypeSubject } from "../../subject";
import type { Query } from "../../what-if-form";

export const metadata: Metadata = { title: "Outlook of an item type" };

type ItemTypeOutlookProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Query>;
};

/** How many pieces of one item type will be sold, and how that was worked out. */
export default async function ItemTypeOutlookPage({ params, searchParams }: ItemTypeOutlookProps) {
  const query = await searchParams;
  const now = await outlookNow(query.today);
  const { id } = await params;
  const itemType = (await itemTypesOf(now.db, { retired: true })).find((each) => each.id === id);
  if (itemType === undefined) notFound();
  return <SubjectScreen now={now} subject={itemTypeSubject(itemType)} query={query} />;
}
