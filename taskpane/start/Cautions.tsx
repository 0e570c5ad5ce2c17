import { Section } from "../components/Section";
import { strings } from "../strings";

const t = strings.cautions;

/** What can hurt, and who decides. */
export function Cautions() {
  return (
    <Section title={t.title}>
      <ul className="rl-cautions">
        {t.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Section>
  );
}
