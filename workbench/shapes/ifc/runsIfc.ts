import { racewayRecord } from "../../../src/raceway/raceway";
import { ORIGIN } from "../../../src/geometry/vector";
import { pullPath } from "../../../src/route/problems";
import type { BuiltPull, BuiltRun } from "../../../src/shop/run/builtRun";
import { differentNames } from "../names";
import { directrix } from "./directrix";
import { globalId } from "./globalId";
import { startProject, type Project } from "./project";
import { keyword, typed, whole, type StepValue, type Written } from "./stepFile";

/**
 * Runs as IFC4 (ISO 16739-1:2018, buildingSMART), a conduit segment for each pull where the run stands in the job: a disk
 * with the bore as its hole, swept along lines and true arcs; its centerline, type, length, and trade size. Inches.
 *
 * @param job what the project is called; a run keeps its ids from file to file as long as job and name stay
 * @param made when, as 2026-12-01T08:00:00
 */
export function runsIfc(runs: readonly BuiltRun[], job: string, made: string): string {
  const project = startProject(job);
  const ownName = differentNames();
  const types = new Map<string, { type: Written; of: Written[] }>();
  const segments = runs.flatMap((built) => {
    const key = `${job}/${ownName(built.run.name)}`;
    const { raceway, size } = built.run;
    const own = built.pulls.map((pull, index) => segment(project, built, pull, `${key}/${index + 1}`, index + 1));
    const known = types.get(`${raceway} ${size}`) ?? { type: typeOf(project, built), of: [] };
    known.of.push(...own);
    types.set(`${raceway} ${size}`, known);
    return own;
  });
  for (const [name, { type, of }] of types) {
    project.file.add("IFCRELDEFINESBYTYPE", globalId(`${job}/types/${name}`), null, null, null, of, type);
  }
  project.contain(segments);
  return project.file.text("IFC4", `${job}.ifc`, made);
}

function typeOf({ file, job }: Project, { run: { raceway, size } }: BuiltRun): Written {
  const name = `${raceway} ${size}`;
  const id = globalId(`${job}/type/${name}`);
  return file.add(
    "IFCCABLECARRIERSEGMENTTYPE",
    id,
    null,
    name,
    null,
    null,
    null,
    null,
    null,
    null,
    keyword("CONDUITSEGMENT"),
  );
}

function segment(project: Project, built: BuiltRun, pull: BuiltPull, key: string, number: number): Written {
  const { file } = project;
  const { run, pulls } = built;
  const shape = file.add("IFCPRODUCTDEFINITIONSHAPE", null, null, shapesOf(project, built, pull));
  const name = pulls.length > 1 ? `${run.name}, pull ${number}` : run.name;
  const placement = project.placeAt(run.start ?? ORIGIN);
  const kind = keyword("CONDUITSEGMENT");
  const id = globalId(key);
  const made = file.add("IFCCABLECARRIERSEGMENT", id, null, name, null, null, placement, shape, run.name, kind);
  const length = file.add("IFCQUANTITYLENGTH", "Length", null, null, pull.parts.developed, null);
  const quantities = ["Qto_CableCarrierSegmentBaseQuantities", null, null, [length]] as const;
  define(project, made, `${key}/quantities`, (id) => file.add("IFCELEMENTQUANTITY", id, null, ...quantities));
  const facts = factsOf(built, pull).map(([label, value]) =>
    file.add("IFCPROPERTYSINGLEVALUE", label, null, value, null),
  );
  define(project, made, `${key}/facts`, (id) => file.add("IFCPROPERTYSET", id, null, "Conduit run", null, facts));
  return made;
}

/** Body and centerline. */
function shapesOf({ file, body, axis }: Project, { run, shoe }: BuiltRun, { pull }: BuiltPull): StepValue {
  const bore = racewayRecord(run.raceway).sizes[run.size]?.insideDiameter?.value;
  const curve = directrix(file, pullPath(pull));
  const inner = bore === undefined ? null : bore / 2;
  const solid = file.add("IFCSWEPTDISKSOLID", curve, shoe.outsideDiameter / 2, inner, null, null);
  return [
    file.add("IFCSHAPEREPRESENTATION", axis, "Axis", "Curve3D", [curve]),
    file.add("IFCSHAPEREPRESENTATION", body, "Body", "AdvancedSweptSolid", [solid]),
  ];
}

const label = (text: string): Written => typed("IFCLABEL", text);

function factsOf({ run }: BuiltRun, { parts, pieces, elbows }: BuiltPull): [name: string, value: Written][] {
  const words = {
    Run: run.name,
    Raceway: run.raceway,
    "Trade size": run.size,
    Area: run.area,
    From: run.from,
    To: run.to,
  };
  const degrees = parts.bends.reduce((sum, { angle }) => sum + angle, 0);
  return [
    ...Object.entries(words).flatMap(([name, value]): [string, Written][] =>
      value === "" ? [] : [[name, label(value)]],
    ),
    ["Route", typed("IFCTEXT", run.route)],
    ["Quantity", typed("IFCINTEGER", whole(run.quantity))],
    ["Pieces", typed("IFCINTEGER", whole(pieces.length))],
    ["Factory elbows", typed("IFCINTEGER", whole(elbows.length))],
    ["Bend degrees", typed("IFCREAL", degrees)],
  ];
}

function define({ file }: Project, segment: Written, key: string, made: (id: string) => Written): void {
  file.add("IFCRELDEFINESBYPROPERTIES", globalId(`${key}/of`), null, null, null, [segment], made(globalId(key)));
}
