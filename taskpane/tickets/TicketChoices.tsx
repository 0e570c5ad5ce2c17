import { Checkbox } from "@fluentui/react-components";
import type { TicketChoices as Choices, TicketWishes } from "../../src/made/counts/ticketChoice";
import { Choice } from "../components/Choice";
import { ticketStrings as t } from "./ticketStrings";

/** Which tickets of the whole job are wanted: a list where there is more than one to choose from, and three yes-or-no. */
export function TicketChoices({
  choices,
  wishes,
  onChange,
  canTell,
}: {
  choices: Choices;
  wishes: TicketWishes;
  onChange(wishes: TicketWishes): void;
  /** Whether the workbook says what is made, and what was issued. */
  canTell: { made: boolean; issue: string };
}) {
  const set = (change: Partial<TicketWishes>) => onChange({ ...wishes, ...change });
  const lists = (["area", "date", "crew", "conduit"] as const).filter(
    (column) => choices[column].length > 1 || wishes[column] !== "",
  );
  return (
    <>
      {lists.length > 0 && (
        <div className="rl-grid">
          {lists.map((column) => (
            <Choice
              key={column}
              label={t.by[column]}
              value={wishes[column]}
              options={[{ value: "", text: t.all }, ...choices[column]]}
              onChange={(value) => set({ [column]: value })}
            />
          ))}
        </div>
      )}
      <div className="rl-row">
        <Checkbox
          label={t.bentOnly}
          checked={wishes.bentOnly}
          onChange={(_, { checked }) => set({ bentOnly: checked === true })}
        />
        {canTell.made && (
          <Checkbox
            label={t.notMadeYet}
            checked={wishes.notMade}
            onChange={(_, { checked }) => set({ notMade: checked === true })}
          />
        )}
        {canTell.issue !== "" && (
          <Checkbox
            label={t.changedSince(canTell.issue)}
            checked={wishes.changed}
            onChange={(_, { checked }) => set({ changed: checked === true })}
          />
        )}
      </div>
    </>
  );
}
