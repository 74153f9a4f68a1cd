declare const unit: unique symbol;

/**
 * A value that carries its unit in its type, so that two units cannot be mixed by accident.
 * Each unit has one constructor, the only place that casts.
 *
 * @example type Milligrams = Brand<number, "milligram">
 */
export type Brand<T, B extends string> = T & { readonly [unit]: B };
