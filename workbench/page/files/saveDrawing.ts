import { builtRows, unbuiltRows } from "../../../src/shop/job/job";
import type { BuiltRun } from "../../../src/shop/run/builtRun";
import { ask, element } from "../dialog";
import type { Desk } from "./desk";
import { jobOfBook } from "./jobOfBook";
import { save } from "./saveFiles";
import { inform } from "./telling";
import { words } from "./words";

const t = words.drawing;

type Kind = keyof typeof t.kinds;

/** The part of the page that draws comes when it is wanted first. */
const shapes = () => import(/* webpackChunkName: "shapes" */ "../../shapes");

/** What each kind of file is made by, and what a browser calls it. */
const MAKERS: Record<Kind, { type: string; make(runs: BuiltRun[], job: string): Promise<BlobPart> }> = {
  dxf: { type: "image/vnd.dxf", make: async (runs) => (await shapes()).runsDxf(runs) },
  ifc: {
    type: "application/x-step",
    make: async (runs, job) => {
      const { runsIfc, timeNow } = await shapes();
      return runsIfc(runs, job, timeNow());
    },
  },
  glb: {
    type: "model/gltf-binary",
    make: async (runs) => (await shapes()).runsGlb(runs) as Uint8Array<ArrayBuffer>,
  },
  obj: { type: "model/obj", make: async (runs) => (await shapes()).runsObj(runs) },
};

/** Lets one choose a kind of file and downloads every run that can be built; says which could not. */
export async function saveDrawing(desk: Desk): Promise<void> {
  const label = element("label", t.kind);
  const select = document.createElement("select");
  select.append(...Object.entries(t.kinds).map(([kind, says]) => new Option(says, kind)));
  label.append(select);
  const choices = [
    { words: words.cancel, value: false },
    { words: words.save.save, value: true, main: true },
  ];
  if (!(await ask(t.title, [t.text, label], choices))) return;
  const kind = select.value as Kind;
  const { type, make } = MAKERS[kind];
  let leftOut: string[] = [];
  const written = await save(`${desk.name}.${kind}`, type, desk, () => {
    const job = jobOfBook(desk.book);
    leftOut = unbuiltRows(job).map(({ name }) => name);
    const runs = builtRows(job).map(({ built }) => built);
    if (runs.length === 0) throw new Error(t.none);
    return make(runs, desk.name);
  });
  if (written && leftOut.length > 0) await inform(t.title, t.leftOut(leftOut));
}
