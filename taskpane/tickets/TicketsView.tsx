import { Spinner } from "@fluentui/react-components";
import { Choice } from "../components/Choice";
import { NoRuns } from "../components/NoRuns";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useRun } from "../run/useRun";
import { strings } from "../strings";
import { TICKET_CSS } from "./paperCss";
import { TicketActions } from "./TicketActions";
import { TicketList } from "./TicketList";
import { ticketStrings as t } from "./ticketStrings";
import { useTickets } from "./useTickets";

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
  const [wholeJob, setWholeJob] = useKept("tickets.wholeJob", false);
  const { tickets, problems } = useTickets(wholeJob ? "all" : row);
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
      {problems.map(({ run, message }, index) => (
        <Notice key={index} intent="error" title={t.notMade(run)}>
          {message}
        </Notice>
      ))}
      {tickets.length === 0 ? (
        <p>{t.noTickets}</p>
      ) : (
        <>
          <TicketActions tickets={tickets} />
          <Section title={`${t.list} (${t.count(tickets.length)})`}>
            <TicketList key={wholeJob ? "all" : row} tickets={tickets} />
          </Section>
        </>
      )}
    </>
  );
}
