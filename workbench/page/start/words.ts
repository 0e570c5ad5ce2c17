/** Everything that starting a job says. */
export const words = {
  title: "Start your own job",
  about:
    "Write each conduit run in one row. Bend marks, cut lengths, materials and bend counts follow by formula. All of it can be changed later.",
  name: "Name of the job",
  units: "Lengths in",
  styles: { feet: "feet and inches", inches: "inches", mm: "millimeters" },
  bench: "The bench bends",
  planes: { vertical: "upright, past the table's edge", horizontal: "flat, on the table" },
  raceways: "What the shop bends",
  sizes: "In the sizes",
  example: "Begin with an example run, to keep or to type over",
  start: "Start my job",
  demo: "Look at the demo job",
  empty: "Start with an empty workbook",
  leave: "Leave it",
  kept: (name: string) => `A copy of “${name}” is kept first; you find it under Earlier copies.`,
  renamed: "Name of the job",
} as const;
