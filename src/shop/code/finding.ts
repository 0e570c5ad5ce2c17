/** Something that stops a run or wants a second look. */
export interface Finding {
  readonly run: string;
  /** "stop": breaks a rule or cannot be made as written; "look": can be made, but look at it first. */
  readonly weight: "stop" | "look";
  /** The rule, with its section and edition where a code is behind it. */
  readonly rule: string;
  readonly finding: string;
  /** What would put it right. */
  readonly fix: string;
  /** Step of the route it concerns, counted from 1; undefined when it concerns the run as a whole. */
  readonly step?: number;
}
