import type { Metadata } from "next";
import { SubjectScreen } from "../_parts/subject-screen";
import { outlookNow } from "../outlook-now";
import { SHOP_SUBJECT } from "../subject";
import type { Query } from "../what-if-form";

export const metadata: Metadata = { title: "Outlook of parcels" };

type ParcelsOutlookProps = { readonly searchParams: Promise<Query> };

/** How many parcels the shop will send, and how that was worked out. */
export default async function ParcelsOutlookPage({ searchParams }: ParcelsOutlookProps) {
  const query = await searchParams;
  const now = await outlookNow(query.today);
  return <SubjectScreen now={now} subject={SHOP_SUBJECT} query={query} />;
}
