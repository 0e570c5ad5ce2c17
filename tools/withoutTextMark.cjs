// A webpack loader for the grid's own package: leaves out the mark of a number stored as text. Switched off by its
// setting, it still reads every text in view as a date, a time and a number each time the grid is drawn.
module.exports = function withoutTextMark(source) {
  const left = source.replace(/^\s*\[ForceStringRenderController\],?\n/gm, "");
  if (left === source) throw new Error("The grid has no such mark any more; see tools/withoutTextMark.cjs.");
  return left;
};
