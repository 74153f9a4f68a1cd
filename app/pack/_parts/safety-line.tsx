import styles from "./pack.module.css";

/** 50 lb, from which two should lift. */
const LIFT_WITH_HELP_FROM_MG = 22_679_618;

/** What an estimate can't promise; heavy parcels get the word about lifting. */
export function SafetyLine({ mg }: { readonly mg: number }) {
  return (
    <p className={styles.safety}>
      Estimates only: nothing here certifies that the package protects its contents. Send a test parcel when a
      recipe is new.
      {mg < LIFT_WITH_HELP_FROM_MG ? null : <strong> Over 50 lb (23 kg): lift with help.</strong>}
    </p>
  );
}
