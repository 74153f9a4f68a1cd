import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { supplyOf } from "#prisma/records/supplies";
import { SubjectScreen } from "../../_parts/subject-screen";
import { outlookNow } from "../../outlook-now";
import { supplySubject } from "../../subject";
import type { Query } from "../../what-if-form";

export const metadata: Metadata = { title: "Outlook of a supply" };

type SupplyOutlookProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Query>;
};

/** What will be used of one supply, and how that was worked out. */
export default async function SupplyOutlookPage({ params, searchParams }: SupplyOutlookProps) {
  const query = await searchParams;
  const now = await outlookNow(query.today);
  const supply = await supplyOf(now.db, (await params).id);
  if (supply === null) notFound();
  return <SubjectScreen now={now} subject={supplySubject(supply)} query={query} />;
}
