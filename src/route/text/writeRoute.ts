import type { Rise, RouteStep } from "./types";

/**
 * The text of a route, one step after another: what {@link readRoute} reads back to the same steps.
 *
 * @example writeRoute(readRoute("UP 4'; bend 30 north")) //=> "up 48, bend 30 north"
 */
export const writeRoute = (steps: readonly RouteStep[]): string => steps.map(writeStep).join(", ");

/** The text of one step, with every number in full: lengths in inches, angles in degrees. */
export function writeStep(step: RouteStep): string {
  switch (step.kind) {
    case "leg":
      return `${step.direction} ${plain(step.length)}${step.back ? " to back" : ""}`;
    case "ahead":
      return `ahead ${plain(step.length)}`;
    case "to":
      return `to ${step.point.map(plain).join(" ")}`;
    case "bend":
      return `bend ${plain(step.angle)} ${step.toward}`;
    case "offset":
      return `offset ${step.rises.map(writeRise).join(" ")} at ${plain(step.angle)}`;
    case "box offset":
      return `box offset ${writeRise(step.rise)} at ${plain(step.angle)}`;
    case "saddle": {
      const over = step.over === null ? "" : ` over ${plain(step.over)}`;
      return `saddle ${plain(step.height)} ${step.toward}${over} at ${plain(step.angle)}`;
    }
    case "sweep":
      return `sweep ${plain(step.radius)}${step.shots === null ? "" : ` in ${step.shots} shots`}`;
    case "elbow":
      return step.radius === null ? "elbow" : `elbow ${plain(step.radius)}`;
    case "box":
      return "box";
    case "body":
      return step.body;
    case "joint":
      return step.fitting;
    case "whip": {
      const word = step.flex === "FMC" ? "flex" : "liquidtight";
      const to = step.point
        ? `to ${step.point.map(plain).join(" ")}`
        : step.moves.map(({ rise, toward }) => `${toward} ${plain(rise)}`).join(" ");
      return `${word} ${plain(step.length)} ${to}`;
    }
  }
}

const writeRise = ({ rise, toward }: Rise): string => `${plain(rise)} ${toward}`;

/** The shortest decimals that read back as the same number, without the exponent that JavaScript gives small ones. */
function plain(value: number): string {
  const text = String(value);
  const [digits, exponent] = text.split("e-");
  if (exponent === undefined || digits === undefined) return text;
  const sign = digits.startsWith("-") ? "-" : "";
  return `${sign}0.${"0".repeat(Number(exponent) - 1)}${digits.replace(/[-.]/g, "")}`;
}
