import { useMemo, useRef } from "react";
import { drawBend } from "../../src/drawing/bend/drawBend";
import { toSvg } from "../../src/drawing/paper/toSvg";
import { TYPICAL_BENDS } from "../../src/drawing/bend/typicalBends";
import { useKept } from "../hooks/useKept";
import { strings } from "../strings";
import { BEND_KINDS, type BendChoice } from "./kinds";

/** Width of a small picture [px]. */
const WIDTH = 84;

/**
 * The kinds of bend as pictures to choose from: one radio group, arrow keys move in it. Once one is chosen they fold, and
 * leave the room to the bend.
 */
export function KindPicker({ value, onChange }: { value: BendChoice["id"]; onChange(value: BendChoice["id"]): void }) {
  const [open, setOpen] = useKept("bend.choosing", true);
  const summary = useRef<HTMLElement>(null);
  const fold = () => {
    setOpen(false);
    summary.current?.focus();
  };
  const chosen = BEND_KINDS.find(({ id }) => id === value)?.title ?? "";
  return (
    <details
      className="rl-fold"
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      onKeyDown={(event) => {
        const inside = event.target instanceof HTMLInputElement;
        if (inside && (event.key === "Enter" || event.key === "Escape")) fold();
      }}
    >
      <summary ref={summary}>
        {strings.bend.which}: <strong>{chosen}</strong>
        {!open && <span className="rl-hint"> {strings.bend.another}</span>}
      </summary>
      <fieldset className="rl-kinds">
        <legend className="rl-unseen">{strings.bend.which}</legend>
        {BEND_KINDS.map((kind) => (
          <label key={kind.id} className="rl-kind">
            <input
              type="radio"
              name="rl-kind"
              value={kind.id}
              checked={kind.id === value}
              onChange={() => onChange(kind.id)}
              // By pointer; an arrow key, which counts no clicks, only tries the next.
              onClick={({ detail }) => detail > 0 && fold()}
            />
            <KindPicture id={kind.id} />
            <span>{kind.title}</span>
          </label>
        ))}
      </fieldset>
    </details>
  );
}

function KindPicture({ id }: { id: BendChoice["id"] }) {
  const svg = useMemo(() => {
    const typical = TYPICAL_BENDS.find(({ shape }) => shape.kind === id);
    return typical ? toSvg(drawBend(typical, { width: WIDTH })) : "";
  }, [id]);
  // The words beside it say what it is.
  return <span aria-hidden="true" className="rl-kind-picture" dangerouslySetInnerHTML={{ __html: svg }} />;
}
