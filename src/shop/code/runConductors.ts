import { remember } from "../../memory/remember";
import { isUserError } from "../../units/errors";
import type { Conductors } from "../../wiring/conductors";
import { readConductors } from "../../wiring/readConductors";
import type { Run } from "../run/runsTable";

/** The conductors of a run; none where its cell is empty, or cannot be read, which the check of its fill tells. */
export const runConductors: (run: Run) => readonly Conductors[] = remember((run: Run): readonly Conductors[] => {
  if (run.conductors === "") return [];
  try {
    return readConductors(run.conductors, "Conductors");
  } catch (error) {
    if (!isUserError(error)) throw error;
    return [];
  }
});
