import { readEdition } from "../../src/raceway/code/edition";
import { bendFacts, type BendFacts } from "../../src/shop/schedule/bendFacts";
import { runPieces, type BuiltRun } from "../../src/shop/run/builtRun";
import { checkBuiltRun } from "../../src/shop/checks/checks";
import { findingsText } from "../../src/shop/checks/findings";
import { buildOneRun } from "../../src/shop/run/oneRun";
import { runBends, runDegrees, runElbows, runLength } from "../../src/shop/run/runTotals";
import { isElbowRow } from "../../src/shop/schedule/schedule";
import { formatLength } from "../../src/units/length";
import { toNumber } from "../../src/units/number";
import { readRules } from "../../src/rules/rules";
import { optional } from "../../src/units/limits";
import { answer } from "../cell/answer";
import { card, inchesField, listField, numberField, scheduleField, showsCards, textField } from "../cell/entity";

/**
 * One bend of a run on a card: marks, dial, gain, shrink and shoe as fields; without cards, the bend and its marks in words.
 *
 * An offset, a saddle or a sweep is one bend with several marks. Fields are Value, Kind, Marks, Line up, Hook, Angles,
 * Dials, Gain, Shrink, Raceway, Size, Radius, Deduct, Springback and Source; =A1.Marks gives the marks of a card in A1,
 * a number for each bend to make. Shrink is over the whole bend: of a three-bend saddle twice SADDLE.SHRINK. A bend that
 * changes direction has none. A factory elbow (PVC) has nothing at the bench but its angle.
 * Example: =CONDUIT.BEND.CARD("east 24, offset 6 up at 30, ahead 36","EMT","1/2") //=> offset 30°: 1' 10-1/4", 2' 10-1/4"
 * Source: as RUN.MARKS; gain derived, 2R·tan(A/2) − R·A for each bend; shrink derived, along the corners less the advance less the gains.
 * @customfunction BEND.CARD
 * @helpurl https://raceway-ledger.example/help/bend.card.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [bend] which bend of the run, counted from 1; omitted: the first
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of factory elbows count here
 * @returns {any} a card, or words where this Excel has no cards
 */
export function bendCard(route: any, raceway: any, size: any, shoes?: any[][], bend?: any, rules?: any[][]): any {
  return answer([route, raceway, size, shoes, bend, rules], (route, raceway, size, shoes, bend, rules) => {
    const which = optional(bend, (value) => toNumber(value, "bend", { min: 1, integer: true })) ?? 1;
    const built = buildOneRun(route, raceway, size, shoes, rules);
    const facts = bendFacts(built, which);
    return showsCards() ? cardOfBend(built, facts) : facts.words;
  });
}

/**
 * One run on a card: length, bends, degrees, cut lengths, check and shoe as fields; without cards, the developed length.
 *
 * Fields are Value (the developed length), Length, Cut lengths, Pieces, Bends, Elbows (where it has factory elbows),
 * Degrees, Gain, Check, Route, Raceway, Size, Radius and Source; =A1.Degrees gives the degrees of a card in A1, =A1.[Cut lengths] a number for each piece.
 * Example: =CONDUIT.RUN.CARD("up 36, east 60","EMT","1/2") //=> 94.2832
 * Source: as RUN.LENGTH, RUN.BENDS, RUN.DEGREES, RUN.MARKS and RUN.CHECK.
 * @customfunction RUN.CARD
 * @helpurl https://raceway-ledger.example/help/run.card.html
 * @param {any} route where the conduit goes, for example: up 4', east 12' 6"
 * @param {any} raceway EMT, Aluminum EMT, IMC, RMC, PVC-coated RMC, PVC 40 or PVC 80
 * @param {any} size trade size (1/2, 3/4, 1 …) or metric designator (16, 21, 27 …)
 * @param {any[][]} [shoes] Shoes table with its header row; omitted: built-in shoes
 * @param {any} [edition] code edition for the check, 2020 or 2023; omitted: 2023
 * @param {any[][]} [rules] rules of your own with a header row: Rule, Value; those of elbows, air, terminals, expansion and pulling count here
 * @returns {any} a card, or the developed length [in] where this Excel has no cards
 */
export function runCard(route: any, raceway: any, size: any, shoes?: any[][], edition?: any, rules?: any[][]): any {
  return answer([route, raceway, size, shoes, edition, rules], (route, raceway, size, shoes, edition, rules) => {
    const codeEdition = readEdition(edition);
    const built = buildOneRun(route, raceway, size, shoes, rules);
    if (!showsCards()) return runLength(built);
    return cardOfRun(built, findingsText(checkBuiltRun(built, codeEdition, readRules(rules))));
  });
}

function cardOfBend(built: BuiltRun, { words, kind, rows, gain, shrink }: BendFacts): Excel.EntityCellValue {
  const made = rows.filter((row) => !isElbowRow(row));
  const shoe: Record<string, number> =
    made.length > 0 ? { Deduct: built.shoe.deduct, Springback: built.shoe.springback } : {};
  return card(words, textField(words), `${kind}, ${built.run.raceway} ${built.run.size}`, [
    {
      title: "At the bench",
      fields: {
        Marks: listField(made.map(({ Mark }) => inchesField(Number(Mark)))),
        "Line up": listField(made.map((row) => scheduleField(row["Line up"]))),
        Hook: listField(made.map(({ Hook }) => scheduleField(Hook))),
        Angles: listField(rows.map(({ Angle }) => scheduleField(Angle))),
        Dials: listField(made.map(({ Dial }) => scheduleField(Dial))),
      },
    },
    {
      title: "The bend",
      fields: {
        Kind: textField(kind),
        Gain: inchesField(gain),
        Shrink: shrink === undefined ? undefined : inchesField(shrink),
      },
    },
    shoeSection(built, shoe),
  ]);
}

function cardOfRun(built: BuiltRun, check: string): Excel.EntityCellValue {
  const { run, pulls } = built;
  const pieces = runPieces(built);
  const [length, elbows] = [runLength(built), runElbows(built)];
  const legs = pulls.flatMap(({ parts }) => parts.legs).reduce((sum, leg) => sum + leg, 0);
  const shown = formatLength(length);
  return card(shown, inchesField(length), `${run.raceway} ${run.size}, ${shown}`, [
    {
      title: "The run",
      fields: {
        Length: textField(shown),
        "Cut lengths": listField(pieces.map(({ cutLength }) => inchesField(cutLength))),
        Pieces: numberField(pieces.length),
        Bends: numberField(runBends(built)),
        Elbows: elbows > 0 ? numberField(elbows) : undefined,
        Degrees: numberField(runDegrees(built)),
        Gain: inchesField(legs - length),
        Check: textField(check),
        Route: textField(run.route),
      },
    },
    shoeSection(built),
  ]);
}

const shoeSection = ({ run, shoe }: BuiltRun, more: Readonly<Record<string, number>> = {}) => ({
  title: "Conduit and shoe",
  fields: {
    Raceway: textField(run.raceway),
    Size: textField(run.size),
    Radius: inchesField(shoe.radius),
    ...Object.fromEntries(Object.entries(more).map(([name, value]) => [name, numberField(value)])),
    Source: textField(shoe.source),
  },
});
