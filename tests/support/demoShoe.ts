import type { BenchShoe } from "../simulator/bench";
import { STICK, type Run } from "../../src/shop/run/runsTable";
import type { Shoe } from "../../src/shop/shoe/shoe";

/** The shoe of the worked examples: 1/2 EMT, R 4, deduct 5, OD 0.706 (radius and deduct: published; see tests/published). */
export const HALF_EMT: Shoe = {
  raceway: "EMT",
  size: "1/2",
  radius: 4,
  deduct: 5,
  outsideDiameter: 0.706,
  springback: 0,
  dialFrom: -5,
  dialTo: 105,
  dialStart: 0,
  shortestTail: 2,
  source: "worked examples",
};

/** The same shoe as the simulated bench knows it. */
export const onBench = ({ radius, deduct, outsideDiameter, springback, secondTest }: Shoe): BenchShoe => ({
  ...{ radius, deduct, outsideDiameter },
  springback: {
    at90: springback,
    ...(secondTest ? { second: { angle: secondTest.angle, opened: secondTest.springback } } : {}),
  },
});

/** A run as the Runs table gives it, with everything but the route at a usual value. */
export const runOf = (route: string, cells: Partial<Run> = {}): Run => ({
  name: "A-1",
  job: "Ferry terminal",
  area: "Pump room",
  raceway: "EMT",
  size: "1/2",
  route,
  quantity: 1,
  from: "",
  to: "",
  conductors: "",
  stick: STICK,
  date: "",
  crew: "",
  fittings: "",
  groundingBushing: "",
  ...cells,
});
