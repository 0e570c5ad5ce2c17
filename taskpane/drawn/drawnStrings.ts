const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`;

/** What the pane says about drawings that come in. */
export const drawnStrings = {
  about:
    "An ASCII DXF, every line a run, or a list of points (CSV: Run, East, North, Up). Each route is built again and laid over the drawing before you add it.",
  choose: "Choose a drawing",
  another: "Choose another",
  sample: "Take the sample drawing",
  noSample: (status: number) => `The sample drawing did not load (${status}).`,
  unit: "Unit of the drawing",
  noUnit: "choose",
  unitHint: "The drawing does not say it.",
  layers: "Layers",
  layersHint: "Raceway and size are guessed from the names.",
  lines: (lines: number) => count(lines, "line"),
  take: (layer: string) => `Take ${layer}`,
  raceway: (layer: string) => `Raceway of ${layer}`,
  size: (layer: string) => `Size of ${layer}`,
  noRaceway: "raceway",
  noSize: "size",
  look: "Look at the runs",
  joining: "Putting the lines together …",
  reached: (done: number, of: number) => `${done} of ${count(of, "run")} laid out`,
  stop: "Stop",
  needs: "Say the unit, and take at least one layer with its raceway and size.",
  noLines: "The drawing has no line that could be a run.",
  found: (taken: number, asDrawn: number, left: number) =>
    `${count(taken, "run")}: ${asDrawn} as drawn, ${taken - asDrawn} a little off` +
    (left > 0 ? `; ${left} not taken, with the reason below.` : "."),
  turned: (degrees: string) => `The drawing lies ${degrees}° from north; its runs are turned back to it.`,
  lengths: (drawn: string, written: string) => `${drawn} drawn, ${written} to make`,
  whole: (rows: number) => `Show the other ${rows} too`,
  more: (rows: number) => `and ${rows} more`,
  notRead: (lines: number) => `Not read: ${count(lines, "thing")}`,
  add: (rows: number) => `Add ${count(rows, "run")} to the Runs table`,
  there: (names: string) => `Names that stand in the table already: ${names}. Both rows stay; Checks says so.`,
  noStart: "The Runs table has no column Start: where the runs begin is left out.",
  noTable: "Set the workbook up first: it has no Runs table.",
  added: (rows: number) => `${count(rows, "run")} added under the last row of Runs.`,
  takeBack: "Take back",
  takenBack: "They are out again; empty rows at the end of the table stay.",
};
