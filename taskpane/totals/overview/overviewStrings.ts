/** The words of the overview and of what goes on paper, ready for translation. */
export const overviewStrings = {
  title: "The job at a glance",
  units: { ft: "ft", money: "", h: "h", pieces: "" } as Record<string, string>,
  notIn: "Not in these numbers",
  paper: {
    title: "On paper",
    what: "What",
    kinds: { recap: "Recap", order: "Order form", change: "Change order" },
    print: "Print or save as PDF",
    save: "Save as a page",
    saved: (name: string) => `Saved as ${name} with your downloads.`,
    noBid: "The recap rests on a Bid table, and this workbook has none: Start sets it up.",
    noIssue: "A change order tells what moved since the runs were issued: copy them into Issued, set up at Start.",
    printed: (when: string) => `printed ${when}`,
    notes: "Not in it",
    caution: "Results are planning aids: whoever signs answers for them.",
  },
} as const;
