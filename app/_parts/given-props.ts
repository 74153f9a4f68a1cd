type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/**
 * The props that were given: those that are undefined are left out, so that a part's own default holds.
 *
 * @param props - props, some undefined
 * @returns the same without the undefined ones
 * @example givenProps({ name: "amount", value: undefined }) // { name: "amount" }
 */
export function givenProps<T extends object>(props: T): Given<T> {
  return Object.fromEntries(Object.entries(props).filter(([, value]) => value !== undefined)) as Given<T>;
}
