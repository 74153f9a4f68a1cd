/** One thing that stops a parcel from being read: where it stands, what is wrong, what to do. */
export type ParcelProblem = {
  readonly field: string;
  readonly message: string;
  readonly wayOut: string;
};
