/** What a solver found for a model. */
export type SolverAnswer = {
  /**
   * - optimal: proven within the gap that was asked for
   * - stopped: out of time; `values` is the best found, or null
   * - infeasible: no values meet all rows
   * - unbounded: the cost has no least value
   */
  readonly kind: "optimal" | "stopped" | "infeasible" | "unbounded";
  /** value of each column by its name; null where none was found */
  readonly values: Readonly<Record<string, number>> | null;
  /** no answer costs less than this; minus Infinity where nothing is proven */
  readonly bound: number;
  /** seconds that the solver took */
  readonly seconds: number;
};

/** How long a solver may take, how exact it must be, and a plan to begin with. */
export type SolveOptions = {
  readonly seconds: number;
  /** stop when the answer is proven to be within this share of the least cost */
  readonly gap: number;
  /** how far from whole the value of a whole unknown may be; the solver's own measure unless said */
  readonly wholeWithin?: number;
  /** values of all columns of an answer that is known already */
  readonly start?: Readonly<Record<string, number>>;
};

/** A solver: handed in by the caller, so that this folder stays pure. It rejects when it fails. */
export type Solve = (modelText: string, options: SolveOptions) => Promise<SolverAnswer>;
