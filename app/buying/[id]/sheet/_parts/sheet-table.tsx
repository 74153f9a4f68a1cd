import type { OrderSheet } from "../../../order-sheet";
import styles from "./sheet.module.css";

/** The lines of an order and what they come to. */
export function SheetTable({ sheet }: { readonly sheet: OrderSheet }) {
  return (
    <>
      <table className={styles.sheet}>
        <caption className={styles.caption}>Lines of the order</caption>
        <thead>
          <tr>
            <th scope="col" className={styles.figure}>
              Packs
            </th>
            <th scope="col">Supply</th>
            <th scope="col" className={styles.figure}>
              A pack
            </th>
            <th scope="col" className={styles.figure}>
              Together
            </th>
          </tr>
        </thead>
        <tbody>
          {sheet.lines.map((line) => (
            <tr key={`${line.supply} ${line.pack}`}>
              <td className={styles.figure}>{line.packs}</td>
              <th scope="row">
                {line.supply}
                <span className={styles.pack}>{line.pack}</span>
              </th>
              <td className={styles.figure}>{line.price}</td>
              <td className={styles.figure}>{line.sum}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          {[
            ["Goods", sheet.goods],
            ["Delivery", sheet.delivery],
            ["Total", sheet.total],
          ].map(([name, sum]) => (
            <tr key={name}>
              <td />
              <th scope="row" colSpan={2}>
                {name}
              </th>
              <td className={styles.figure}>{sum}</td>
            </tr>
          ))}
        </tfoot>
      </table>
      {sheet.note === "" ? null : <p>{sheet.note}</p>}
    </>
  );
}
