import { bends } from "./bends";
import { bid } from "./bid";
import { cards } from "./cards";
import { cuts } from "./cuts";
import { jobs } from "./jobs";
import { kicks } from "./kicks";
import { lengths } from "./lengths";
import { made } from "./made";
import { offsets } from "./offsets";
import { pulling } from "./pulling";
import { runs } from "./runs";
import { saddles } from "./saddles";
import { stubs } from "./stubs";
import { sweeps } from "./sweeps";
import { tables } from "./tables";
import { takeoff } from "./takeoff";
import { testBends } from "./testBends";
import { wiring } from "./wiring";
import type { Family } from "./types";

/** The families in the order of the guide: from a length to a whole job. */
export const FAMILIES: readonly Family[] = [
  lengths,
  bends,
  stubs,
  offsets,
  kicks,
  saddles,
  sweeps,
  testBends,
  tables,
  wiring,
  pulling,
  runs,
  cards,
  jobs,
  takeoff,
  bid,
  cuts,
  made,
];
