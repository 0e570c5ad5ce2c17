import { InputError } from "../../units/errors";
import { toAngle } from "../../units/angle";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";
import { keepWords } from "./ownWords";
import { respell } from "./respell";
import { meantError, RouteError, stepError } from "./routeError";
import { STEP_FORMS, type StepReaders } from "./stepForms";
import type { RouteStep } from "./types";

/** Longest length in a route [in], ten thousand feet: beyond it a unit was mistaken. */
const LONGEST = 120000;
/** A length must be more than this [in]: a thousandth cannot be laid out. */
const SHORTEST = 0.001;
/** Longest text of one step [characters]. */
const LONGEST_STEP = 120;
/** More shots than this are a mistaken number: a 90 in shots of 1°. */
const MOST_SHOTS = 90;

const ANY_STEP =
  "up, down, north, south, east or west with a length, ahead, to, bend, kick, offset, saddle, sweep, elbow, stub, box, " +
  "LB (or another conduit body), union, coupling, expansion or flex";
const PARTED = `${ANY_STEP} (commas part steps: write 12.5 for twelve and a half)`;

/**
 * Reads the text of one step.
 *
 * @param text as the person wrote it, without the comma
 * @param step its number, counted from 1, for the messages
 * @throws InputError with the step's number, what was read and what was expected
 */
export function readStep(text: string, step: number): RouteStep {
  const words = text.trim().replace(/\s+/g, " ").toLowerCase();
  try {
    return keepWords(readWords(words, text, step), text.trim().replace(/\s+/g, " "));
  } catch (error) {
    if (!(error instanceof RouteError) || words.length > LONGEST_STEP) throw error;
    const meant = respell(words, step === 1, (offer) => reads(offer, step));
    throw meant.length === 0 ? error : meantError(step, text.trim(), meant);
  }
}

function reads(words: string, step: number): boolean {
  try {
    readWords(words, words, step);
    return true;
  } catch {
    return false;
  }
}

function readWords(words: string, text: string, step: number): RouteStep {
  if (words.length > LONGEST_STEP) throw stepError(step, text.trim(), `at most ${LONGEST_STEP} characters in a step`);
  const form = STEP_FORMS.find(({ opens }) => opens.test(words));
  if (!form) throw stepError(step, text.trim(), /^[-.\d]/.test(words) ? PARTED : ANY_STEP);
  const match = form.whole.exec(words);
  if (!match) throw stepError(step, text.trim(), form.expected);
  try {
    return form.read(match, VALUES);
  } catch (error) {
    if (!(error instanceof InputError) || error instanceof RouteError) throw error;
    throw new RouteError(step, error.message);
  }
}

const VALUES: StepReaders = {
  length: (text, what) => toInches(text, what, { above: SHORTEST, max: LONGEST }),
  coordinate: (text, what) => toInches(text, what, { min: -LONGEST, max: LONGEST }),
  angle: (text, what, max) => toAngle(text, what, max === undefined ? undefined : { above: 0, max }),
  shots: (text) => toNumber(Number(text), "shots", { min: 2, max: MOST_SHOTS }),
};
