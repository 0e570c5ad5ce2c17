import { ORIGIN, type Vec3 } from "../../../src/geometry/vector";
import { globalId } from "./globalId";
import { DERIVED, keyword, StepFile, typed, whole, type Written } from "./stepFile";

/** A started IFC file: a project with one building, in inches. */
export interface Project {
  readonly file: StepFile;
  readonly job: string;
  /** The contexts of solid bodies and of centerlines. */
  readonly body: Written;
  readonly axis: Written;
  /** A placement in the building [in]. */
  placeAt(point: Vec3): Written;
  /** Puts elements into the building. */
  contain(elements: readonly Written[]): void;
}

/** Two points nearer than this are one for a program that reads the file [in]. */
const PRECISION = 1e-5;

export function startProject(job: string): Project {
  const file = new StepFile();
  const axes = (point: Vec3) => file.add("IFCAXIS2PLACEMENT3D", file.add("IFCCARTESIANPOINT", point), null, null);
  const space = axes(ORIGIN);
  const context = file.add("IFCGEOMETRICREPRESENTATIONCONTEXT", null, "Model", whole(3), PRECISION, space, null);
  const part = (name: string, view: string) => {
    const derived = [DERIVED, DERIVED, DERIVED, DERIVED];
    const given = [context, null, keyword(view), null];
    return file.add("IFCGEOMETRICREPRESENTATIONSUBCONTEXT", name, "Model", ...derived, ...given);
  };
  const [body, axis] = [part("Body", "MODEL_VIEW"), part("Axis", "GRAPH_VIEW")];
  const project = file.add(
    "IFCPROJECT",
    globalId(`${job}/`),
    null,
    job,
    null,
    null,
    null,
    null,
    [context],
    units(file),
  );
  const place = (within: Written | null, point: Vec3) => file.add("IFCLOCALPLACEMENT", within, axes(point));
  /** A part of the project that things stand in: its own attributes come last, after `ELEMENT`. */
  const standing = (entity: string, name: string, at: Written, own: number) => {
    const id = globalId(`${job}/${name.toLowerCase()}`);
    const nothing = Array.from({ length: own }, () => null);
    return file.add(entity, id, null, name, null, null, at, null, null, keyword("ELEMENT"), ...nothing);
  };
  const site = standing("IFCSITE", "Site", place(null, ORIGIN), 5);
  const inBuilding = place(null, ORIGIN);
  const building = standing("IFCBUILDING", "Building", inBuilding, 3);
  const parts = (key: string, whole: Written, of: Written) =>
    file.add("IFCRELAGGREGATES", globalId(`${job}/${key}`), null, null, null, whole, [of]);
  parts("project's site", project, site);
  parts("site's building", site, building);
  return {
    ...{ file, job, body, axis },
    placeAt: (point) => place(inBuilding, point),
    contain: (elements) =>
      void file.add(
        "IFCRELCONTAINEDINSPATIALSTRUCTURE",
        globalId(`${job}/contains`),
        null,
        null,
        null,
        [...elements],
        building,
      ),
  };
}

/** Inches by their meters, and radians. */
function units(file: StepFile): Written {
  const meter = file.add("IFCSIUNIT", DERIVED, keyword("LENGTHUNIT"), null, keyword("METRE"));
  const exponents = [1, 0, 0, 0, 0, 0, 0].map(whole);
  const length = file.add("IFCDIMENSIONALEXPONENTS", ...exponents);
  const size = file.add("IFCMEASUREWITHUNIT", typed("IFCLENGTHMEASURE", 0.0254), meter);
  const inch = file.add("IFCCONVERSIONBASEDUNIT", length, keyword("LENGTHUNIT"), "INCH", size);
  const radian = file.add("IFCSIUNIT", DERIVED, keyword("PLANEANGLEUNIT"), null, keyword("RADIAN"));
  return file.add("IFCUNITASSIGNMENT", [inch, radian]);
}
