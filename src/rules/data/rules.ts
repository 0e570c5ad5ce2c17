import { OTHER_RACEWAYS } from "./otherRaceways";
import type { TakeoffRule } from "./takeoffRule";

/** The rules as they are where nobody changes one. Their names are keys that the compiler knows. */
export const RULES = [
  {
    rule: "Lengths shown in",
    value: "as written",
    unit: "a unit of length",
    source:
      "your choice: feet, inches or mm, in messages, notes and texts of lengths; as written: inches, but mm or m where a route is",
  },
  {
    rule: "Couplings with each stick, EMT",
    value: 0,
    unit: "each",
    source: "Steel Tube Institute, steeltubeinstitute.org, EMT: unthreaded",
  },
  {
    rule: "Couplings with each stick, Aluminum EMT",
    value: 0,
    unit: "each",
    source: "Steel Tube Institute, steeltubeinstitute.org, EMT: unthreaded",
  },
  {
    rule: "Couplings with each stick, IMC",
    value: 1,
    unit: "each",
    source: "Steel Tube Institute, steeltubeinstitute.org, IMC: 10 ft with coupling",
  },
  {
    rule: "Couplings with each stick, RMC",
    value: 1,
    unit: "each",
    source: "Steel Tube Institute, steeltubeinstitute.org, RMC: coupling on one end, cap on the other",
  },
  {
    rule: "Couplings with each stick, PVC-coated RMC",
    value: 1,
    unit: "each",
    source: "common practice, no source: as for RMC",
  },
  {
    rule: "Couplings with each stick, PVC 40",
    value: 1,
    unit: "each",
    source: "common practice, no source: the bell of the stick",
  },
  {
    rule: "Couplings with each stick, PVC 80",
    value: 1,
    unit: "each",
    source: "common practice, no source: the bell of the stick",
  },
  {
    rule: "Connectors per end, EMT set-screw",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, Aluminum EMT set-screw",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, EMT set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, Aluminum EMT set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, EMT set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, Aluminum EMT set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, EMT compression",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, Aluminum EMT compression",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, EMT compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, Aluminum EMT compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, EMT compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, Aluminum EMT compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, IMC threaded",
    value: 0,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Locknuts per end, IMC threaded",
    value: 2,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Bushings per end, IMC threaded",
    value: 1,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Connectors per end, IMC set-screw",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, IMC set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, IMC set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, IMC compression",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, IMC compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, IMC compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, RMC threaded",
    value: 0,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Locknuts per end, RMC threaded",
    value: 2,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Bushings per end, RMC threaded",
    value: 1,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Connectors per end, RMC set-screw",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, RMC set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, RMC set-screw",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, RMC compression",
    value: 1,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Locknuts per end, RMC compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Bushings per end, RMC compression",
    value: 0,
    unit: "each",
    source: "common practice, no source: the connector brings its locknut",
  },
  {
    rule: "Connectors per end, PVC-coated RMC threaded",
    value: 0,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Locknuts per end, PVC-coated RMC threaded",
    value: 2,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Bushings per end, PVC-coated RMC threaded",
    value: 1,
    unit: "each",
    source: "common practice, no source: a locknut on each side of the wall, a bushing on the end",
  },
  {
    rule: "Connectors per end, PVC 40 cement",
    value: 1,
    unit: "each",
    source: "common practice, no source: a terminal adapter and a locknut",
  },
  {
    rule: "Locknuts per end, PVC 40 cement",
    value: 1,
    unit: "each",
    source: "common practice, no source: a terminal adapter and a locknut",
  },
  {
    rule: "Bushings per end, PVC 40 cement",
    value: 0,
    unit: "each",
    source: "common practice, no source: a terminal adapter and a locknut",
  },
  {
    rule: "Connectors per end, PVC 80 cement",
    value: 1,
    unit: "each",
    source: "common practice, no source: a terminal adapter and a locknut",
  },
  {
    rule: "Locknuts per end, PVC 80 cement",
    value: 1,
    unit: "each",
    source: "common practice, no source: a terminal adapter and a locknut",
  },
  {
    rule: "Bushings per end, PVC 80 cement",
    value: 0,
    unit: "each",
    source: "common practice, no source: a terminal adapter and a locknut",
  },
  {
    rule: "Straps per support",
    value: 1,
    unit: "each",
    source: "common practice, no source",
  },
  {
    rule: "Support edition",
    value: 2023,
    unit: "edition",
    source: "NEC 342.30, 344.30, 352.30, 358.30: the edition whose spacing is used",
  },
  {
    rule: "Factory elbows above size, metal",
    value: "no shoe",
    unit: "trade size",
    source: "yours to set: no shoe buys the bends of sizes without one, none bends every size, all buys every bend",
  },
  {
    rule: "Factory elbows above size, PVC",
    value: "no shoe",
    unit: "trade size",
    source: "common practice, no source: PVC, and RTRC as well, is bent in the shop only where Shoes has one for it",
  },
  {
    rule: "Factory elbow angles",
    value: "90, 60, 45, 30, 22.5, 15, 11.25",
    unit: "deg",
    source: "common practice, no source: other angles are bent",
  },
  {
    rule: "Factory elbow radius",
    value: "standard",
    unit: "in or standard",
    source:
      "NEC chapter 9, table 2, one-shot, as elbows have it (common practice); special ones by size, as in RMC 4: 24; 2: 18",
  },
  {
    rule: "Factory elbow straight ends",
    value: "listed",
    unit: "in or listed",
    source:
      "ANSI C80.1, from memory, PVC alike; none for EMT, where no print was found: measure yours, as in EMT 2: 2; 4: 3",
  },
  {
    rule: "Straight for a coupling",
    value: "listed",
    unit: "in or listed",
    source:
      "what of a conduit lies in a coupling, kept from bends: couplings of C80.1 and sockets of TC 3, from memory; EMT 1 in., common practice, no source; yours as in EMT: 0.75; PVC 40 2: 1-1/2",
  },
  {
    rule: "Gap in a coupling",
    value: 0,
    unit: "in by size",
    source:
      "yours to set, counted as 0: what is left between the ends of two conduits, at a stop or between threads, as in EMT: 1/16",
  },
  {
    rule: "Bell in a stick",
    value: 0,
    unit: "in by size",
    source:
      "yours to set, counted as 0: what of a 10 or 20 ft stick of PVC is its bell, as in PVC 40 2: 2; 0 where the bell comes besides",
  },
  {
    rule: "Take-out at a box",
    value: 0,
    unit: "in out or in",
    source:
      "yours to set, counted as 0: how far the conduit ends before the box, as in EMT 1/2: 5/8; negative where it goes on into it",
  },
  {
    rule: "Take-out at a hub",
    value: 0,
    unit: "in out or in",
    source: "yours to set, counted as 0: the same where From or To names a hub",
  },
  {
    rule: "Take-out at a body",
    value: 0,
    unit: "in out or in",
    source:
      "yours to set, counted as 0: the same where From or To names a conduit body (LB, LL, LR or body), or the route has one; " +
      "rows of your own go before it, as Take-out LB EMT 1 with 1-1/2, or 1-1/2, 2-1/4 where the run comes in and goes on",
  },
  {
    rule: "Expansion temperature change",
    value: 60,
    unit: "F",
    source:
      "common practice, no source: use your site's; NEC 352.44 asks for a fitting from 1/4 in. of change. For PVC; a run's own " +
      "Temperature change goes before it",
  },
  {
    rule: "Expansion fitting from, metal",
    value: 0.25,
    unit: "in of travel",
    source:
      "yours to set: NEC 300.7(B) names no amount; this is PVC's. Counted where a run has its own Temperature change",
  },
  {
    rule: "Expansion fitting travel",
    value: 4,
    unit: "in of travel",
    source: "common practice, no source: see the fitting",
  },
  {
    rule: "Conductor make-up at each end",
    value: 36,
    unit: "in",
    source: "common practice, no source",
  },
  {
    rule: "Conductor make-up at each pull box",
    value: 24,
    unit: "in",
    source: "common practice, no source",
  },
  {
    rule: "Ambient temperature",
    value: 30,
    unit: "C",
    source: "NEC table 310.16 is for 30 °C: use your site's; a run's own Ambient goes before it",
  },
  {
    rule: "Terminals to 100 A",
    value: 60,
    unit: "C of terminals",
    source: "NEC 110.14(C)(1), from memory: 60 °C to 100 A unless the equipment is marked; 75 where yours is",
  },
  {
    rule: "Terminals above 100 A",
    value: 75,
    unit: "C of terminals",
    source: "NEC 110.14(C)(1), from memory",
  },
  {
    rule: "Pulling friction",
    value: 0.5,
    unit: "of 1",
    source:
      "a utility's transmission standard (TES-P-104.05, 2007): general 0.5; in a duct PVC jackets dry 0.5 to 0.6, lubricated 0.25 to " +
      "0.35, PE jackets dry 0.3 to 0.4, lubricated 0.15 to 0.25. A run's own Check pull goes before it",
  },
  {
    rule: "Pulled by",
    value: "grip",
    unit: "grip or eye",
    source: "yours to set: a grip of 1,000 lb on one cable (an ICEA-based summary), or an eye on the conductors' metal",
  },
  {
    rule: "Most sidewall pressure",
    value: 300,
    unit: "lb/ft",
    source: "an ICEA-based summary, iewc.com; the cable maker may allow more",
  },
  {
    rule: "Weight of cable in bends",
    value: "left out",
    unit: "left out or counted",
    source:
      "left out, as a telephone duct manual has it (8.12); counted in level bends by an open code's full form, which adds most where a " +
      "bend comes first",
  },
  {
    rule: "Pull finding from",
    value: 80,
    unit: "% of a limit",
    source:
      "yours to set, no source: below it Checks says nothing of a pull unless Check pull asks; JOB.CIRCUITS tells each",
  },
  {
    rule: "Ends that are no boxes",
    value: "panel, panelboard, switchboard, switchgear, transformer, starter, disconnect, motor, pump, fan, existing",
    unit: "words",
    source: "common practice, no source: an end whose name has one of these words is not a box to buy",
  },
  {
    rule: "Alternates in the job",
    value: "none",
    unit: "words",
    source:
      "yours to set: none is the base bid; all, or the names in the column Alternate that are chosen, as in A1, A3",
  },
  {
    rule: "Work counted besides",
    value: "none",
    unit: "operations",
    source:
      "yours to set: all, or some of cuts, threads, reams, terminations, wire terminations, supports, each with minutes of its own in Labor",
  },
  {
    rule: "Sawn ends of a cut piece",
    value: 1,
    unit: "each",
    source:
      "common practice, no source: its other end is the stick's own; 2 where pieces are short and come out of the middle of sticks",
  },
  {
    rule: "Quotes as of",
    value: "",
    unit: "day",
    source: "yours to set: the day the bid is for, as 2026-05-02; then JOB.MISSING names the quotes that are too old",
  },
  {
    rule: "Oldest quote",
    value: 30,
    unit: "days",
    source: "yours to set, no source: how many days a vendor holds a price",
  },
  {
    rule: "Labor factors of several columns",
    value: "multiplied",
    unit: "multiplied or added",
    source: "common practice, no source: both are in use",
  },
  {
    rule: "Saw kerf",
    value: 0.0625,
    unit: "in",
    source: "common practice, no source: measure your blade",
  },
  {
    rule: "Shortest offcut to keep",
    value: 12,
    unit: "in",
    source: "common practice, no source",
  },
  {
    rule: "Cut allowance per piece, EMT",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Cut allowance per piece, Aluminum EMT",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Cut allowance per piece, IMC",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Cut allowance per piece, RMC",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Cut allowance per piece, PVC-coated RMC",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Cut allowance per piece, PVC 40",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Cut allowance per piece, PVC 80",
    value: 0,
    unit: "in",
    source: "yours to set: what threading or trimming takes of a cut piece",
  },
  {
    rule: "Strut beyond the outer conduit",
    value: 2,
    unit: "in",
    source: "common practice, no source: what of a trapeze's strut stands out on each side of a rack",
  },
  {
    rule: "Rods of a trapeze",
    value: 2,
    unit: "each",
    source: "common practice, no source: 0 for racks on a wall or a floor",
  },
  ...OTHER_RACEWAYS,
] as const satisfies readonly TakeoffRule[];
