/** How a piece came out. */
export interface Outcome {
  readonly good: boolean;
  readonly note: string;
  readonly measured: readonly { readonly bend: number; readonly dial: number; readonly angle: number }[];
}
