/** What the pane says of a trial. */
export const trialStrings = {
  button: "Begin",
  again: "Begin anew",
  about:
    "Makes a sheet of its own, enters every function on it, lets a table grow, times jobs of 100 and 1,000 runs, finds how much Excel takes at once, and takes the sheet away again. It takes some minutes. A new, empty workbook is best for it: what you did before may no longer be undone.",
  noData: "The report says what this Excel is and what it does. Nothing of your workbook is in it.",
  canceled: "Stopped. What was found until then is below.",
  through: (differs: number, absent: number) =>
    (differs === 0
      ? "Through: what was tried is as the guide has it."
      : `Through: ${differs === 1 ? "1 thing is" : `${differs} things are`} not as the guide has it.`) +
    (absent === 0 ? "" : ` ${absent === 1 ? "1 look is" : `${absent} looks are`} not to be had here.`),
  report: "The report",
  copy: "Copy the report",
  copied: "Copied.",
  copyByHand: "This Excel does not let the pane copy: the report is selected, press Ctrl+C (on a Mac Command+C).",
  where: "Send it with an issue in the place you have the add-in from; docs/excel.md says how.",
  byHand: "Two things only you can see",
  tryPrint: "Try printing",
  trySave: "Try saving",
  sawPrint: "Did a print window open?",
  sawSave: "Did a file arrive?",
  yes: "Yes",
  no: "No",
  page: "A page of the trial",
  fileName: "raceway-ledger-trial.html",
};
