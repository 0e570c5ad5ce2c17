/** One rule of the take-off: how many, how long, or words; and where the value comes from. */
export interface TakeoffRule {
  readonly rule: string;
  readonly value: string | number;
  readonly unit: string;
  readonly source: string;
}
