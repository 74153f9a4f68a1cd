import type { ParcelFormInput } from "../parcels/parcel-form";

/** A parcel that is kept on this device until it can be sent. */
export type UnsentParcel = { readonly form: ParcelFormInput; readonly words: string };

const STORE_KEY = "wadding-unsent-parcels";

/** A place that keeps text by name, such as the browser's local storage. */
export type TextStore = Pick<Storage, "getItem" | "setItem">;

/**
 * The parcels kept on this device, oldest first.
 * @param store where they are kept
 * @returns the parcels; none where nothing is kept
 */
export function unsentParcels(store: TextStore): readonly UnsentParcel[] {
  const kept = store.getItem(STORE_KEY);
  return kept === null ? [] : (JSON.parse(kept) as UnsentParcel[]);
}

/**
 * Keeps a parcel until it can be sent; one with the same key is kept once.
 * @param store where they are kept
 * @param parcel the parcel that could not be sent
 */
export function keepUnsent(store: TextStore, parcel: UnsentParcel): void {
  const others = unsentParcels(store).filter((kept) => kept.form.id !== parcel.form.id);
  store.setItem(STORE_KEY, JSON.stringify([...others, parcel]));
}

/**
 * Lets go of a parcel that was sent or withdrawn.
 * @param store where they are kept
 * @param id key of the parcel
 */
export function forgetUnsent(store: TextStore, id: string): void {
  store.setItem(STORE_KEY, JSON.stringify(unsentParcels(store).filter((kept) => kept.form.id !== id)));
}
