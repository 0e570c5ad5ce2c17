import { Link } from "@fluentui/react-components";
import { useLedger } from "../hooks/useLedger";
import { useRun } from "../run/useRun";
import { strings } from "../strings";

/** Names of runs; each selects its row in the Runs sheet. */
export function RowLinks({ names }: { names: readonly string[] }) {
  const { selectRun } = useLedger();
  const { runs } = useRun();
  return (
    <span className="rl-links">
      {names.map((name) => {
        const row = runs.find((run) => run.name === name)?.row;
        if (row === undefined) return <span key={name}>{name}</span>;
        return (
          <Link
            key={name}
            as="button"
            title={strings.totals.toRow(name)}
            onClick={() => void selectRun(row).catch(() => undefined)}
          >
            {name}
          </Link>
        );
      })}
    </span>
  );
}
