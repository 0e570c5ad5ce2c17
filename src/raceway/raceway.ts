import { InputError, quoteValue } from "../units/errors";
import { inWords } from "./inWords";

/** Kinds of raceway the tables know. */
export const RACEWAYS = ["EMT", "IMC", "RMC", "PVC-coated RMC", "PVC 40", "PVC 80"] as const;

export type Raceway = (typeof RACEWAYS)[number];

/** The trade's other words for each kind, lower case, letters and digits only. */
const WORDS: Record<Raceway, readonly string[]> = {
  EMT: ["emt", "thinwall", "electricalmetallictubing"],
  IMC: ["imc", "intermediate", "intermediatemetalconduit", "intermediatemetal"],
  RMC: [
    "rmc",
    "rigid",
    "rigidmetalconduit",
    "rigidmetal",
    "rigidsteel",
    "rigidconduit",
    "galvanizedrigid",
    "grc",
    "grs",
  ],
  "PVC-coated RMC": [
    "pvccoatedrmc",
    "pvccoatedrigid",
    "pvccoated",
    "pvccoatedgrc",
    "coatedrmc",
    "coatedrigid",
    "pvcrmc",
  ],
  "PVC 40": ["pvc40", "pvcsch40", "pvcsched40", "pvcschedule40", "sch40pvc", "schedule40pvc", "schedule40", "sch40"],
  "PVC 80": ["pvc80", "pvcsch80", "pvcsched80", "pvcschedule80", "sch80pvc", "schedule80pvc", "schedule80", "sch80"],
};

const BY_WORD = new Map(RACEWAYS.flatMap((raceway) => WORDS[raceway].map((word) => [word, raceway] as const)));

/**
 * Reads a kind of raceway, whatever its case and punctuation; the trade's other words are understood.
 *
 * @param argument its name in messages
 * @throws InputError that lists the kinds that are known
 * @example readRaceway("galvanized rigid") //=> "RMC"
 */
export function readRaceway(value: unknown, argument = "raceway"): Raceway {
  const word = typeof value === "string" ? value.toLowerCase().replace(/[^a-z0-9]+/g, "") : "";
  const raceway = BY_WORD.get(word);
  if (raceway !== undefined) return raceway;
  const hint = word === "pvc" ? " Write the schedule too." : "";
  throw new InputError(`${argument} must be ${inWords(RACEWAYS)}; got ${quoteValue(value)}.${hint}`);
}

/** True for plastic conduit, whatever its wall. */
export const isPvc = (raceway: Raceway): raceway is "PVC 40" | "PVC 80" => raceway === "PVC 40" || raceway === "PVC 80";
