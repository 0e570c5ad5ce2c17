/** The words of the picture of the whole job, ready for translation. */
const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

export const wholeStrings = {
  title: "The job in one picture",
  area: "Area",
  allAreas: "all",
  by: "Told apart by",
  bySize: "size",
  byState: "what is made",
  run: "Run",
  noRun: "none",
  toRow: (run: string) => `Show ${run} in the sheet`,
  nobody:
    "No run says where it begins. Write east, north and up of the job's zero into the column Start, as in 100 0 96.",
  nowhere: (runs: readonly string[]) => `Not in the picture, without a Start: ${runs.join(", ")}.`,
  leftOut: (drawn: number, left: number) =>
    `The first ${drawn} runs are drawn, ${many(left, "run is", "runs are")} left out: choose an area.`,
  save: "Save the picture",
  notSaved:
    "This Excel lets a pane save no file, as on a Mac. In Excel on the web or on Windows the picture can be saved.",
  saved: (name: string) => `Saved as ${name} with your downloads.`,
  clashes: (count: number) =>
    count === 0
      ? "No two of these runs take the same place."
      : `${many(count, "pair of runs takes", "pairs of runs take")} the same place`,
  more: "There are more; these are the first.",
  clash: (apart: string, needed: string) => `${apart} center to center where they need ${needed}`,
  where: (along: string, one: string, other: string, at: string) =>
    `${along} along ${one}, ${other} along the other, at ${at} east, north and up`,
};
