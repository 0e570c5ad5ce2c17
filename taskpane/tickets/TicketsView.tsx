import { Spinner } from "@fluentui/react-components";
import type { TicketWishes } from "../../src/made/counts/ticketChoice";
import { Choice } from "../components/Choice";
import { NoRuns } from "../components/NoRuns";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useRun } from "../run/useRun";
import { useMade } from "../made/useMade";
import { strings } from "../strings";
import { TICKET_CSS } from "./paper/paperCss";
import { TicketActions } from "./TicketActions";
import { TicketList } from "./TicketList";
import { ticketStrings as t } from "./ticketStrings";
import { TicketChoices } from "./TicketChoices";
import { NO_WISHES, useIssue, useTickets } from "./useTickets";

/** Shop tickets, one for each piece: of the selected run, or of the whole job. */
export function TicketsView({ toStart }: { toStart(): void }) {
  const { state } = useLedger();
  const { table, runs } = useRun();
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  if (!table) return <NoRuns toStart={toStart} />;
  if (runs.length === 0) return <p>{t.empty}</p>;
  return <Tickets />;
}

function Tickets() {
  const { selectRun } = useLedger();
  const { row, runs } = useRun();
  const { made } = useMade();
  const issue = useIssue();
  const [wholeJob, setWholeJob] = useKept("tickets.wholeJob", false);
  const [wishes, setWishes] = useKept<TicketWishes>("tickets.wishes", { ...NO_WISHES, bentOnly: true });
  const wanted = wholeJob ? wishes : NO_WISHES;
  const { tickets, problems, straight, rows, choices } = useTickets(wholeJob ? "all" : row, wanted, issue);
  const choose = (value: string) => {
    setWholeJob(value === "all");
    if (value !== "all") void selectRun(Number(value)).catch(() => undefined);
  };
  return (
    <>
      <style>{TICKET_CSS}</style>
      <Choice
        label={t.which}
        value={wholeJob ? "all" : String(row)}
        options={[
          { value: "all", text: t.wholeJob },
          ...runs.map(({ row: value, name }) => ({ value: String(value), text: name })),
        ]}
        onChange={choose}
      />
      {wholeJob && (
        <TicketChoices
          choices={choices}
          wishes={wishes}
          onChange={setWishes}
          canTell={{ made: made !== undefined, issue: issue?.name ?? "" }}
        />
      )}
      {problems.map(({ run, message }, index) => (
        <Notice key={index} intent="error" title={t.notMade(run)}>
          {message}
        </Notice>
      ))}
      {straight > 0 && <p>{t.straight(straight)}</p>}
      {tickets.length === 0 ? (
        <p>{wholeJob && problems.length === 0 ? t.noneWanted : t.noTickets}</p>
      ) : (
        <>
          <TicketActions
            tickets={tickets}
            issue={issue?.name ?? ""}
            straight={straight}
            rows={rows}
            made={wanted.notMade ? made : undefined}
          />
          <Section title={`${t.list} (${t.count(tickets.length)})`}>
            <TicketList key={wholeJob ? "all" : row} tickets={tickets} />
          </Section>
        </>
      )}
    </>
  );
}
