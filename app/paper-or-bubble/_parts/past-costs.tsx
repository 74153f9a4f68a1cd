import { Section } from "../../_parts/section";
import type { CushionAnswer } from "../cushion-answer";
import { PAST_DAYS } from "../read-cushion-ground";
import { type MoneyAndMass, minorText } from "../why-words";
import { RowsTable } from "./rows-table";

type PastCostsProps = { readonly answer: CushionAnswer; readonly shop: MoneyAndMass };

/** What the parcels of late would have cost in each way, all reckoned alike. */
export function PastCosts({ answer: { past, styles: inStyles }, shop }: PastCostsProps) {
  // Without any price and postage there is no sum to speak of.
  if (past.parcels === 0 || past.asPackedMinor === 0) return null;
  const rows = [
    { name: "As you packed them", minor: past.asPackedMinor },
    ...inStyles.map((style) => ({
      name: style === "mixed" ? "All mixed" : `All on ${style}`,
      minor: past.allMinor.get(style) ?? 0,
    })),
    { name: "Each in its cheapest way", minor: past.bestMinor },
  ];
  return (
    <Section
      title={pastTitle(past, shop)}
      aside={`${past.parcels} parcels of the last ${PAST_DAYS} days (unusual ones left out), by their cards of today and by the prices and the rate card above: not what was paid then. Each to its own zone where that was noted.${past.leftOut === 0 ? "" : ` ${past.leftOut} more are left out: there is no recipe to reckon them by.`}`}
    >
      <RowsTable
        caption={`What the parcels of the last ${PAST_DAYS} days would cost`}
        head="Packed"
        columns={["All together", "A parcel", "Against as packed"]}
        rows={rows.map(({ name, minor }) => ({
          name,
          cells: [
            minorText(minor, shop),
            minorText(minor / past.parcels, shop),
            againstWords(minor - past.asPackedMinor, shop),
          ],
        }))}
      />
    </Section>
  );
}

function pastTitle(past: CushionAnswer["past"], shop: MoneyAndMass): string {
  const saved = past.asPackedMinor - past.bestMinor;
  if (Math.round(saved) === 0) return "You packed each parcel in its cheapest way";
  return `${past.otherStyle} parcels of late would have cost ${minorText(saved, shop)} less in another style`;
}

function againstWords(more: number, shop: MoneyAndMass): string {
  if (Math.round(more) === 0) return "the same";
  return more > 0 ? `${minorText(more, shop)} more` : `${minorText(-more, shop)} less`;
}
