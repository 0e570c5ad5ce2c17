import { useMemo } from "react";
import { drawBend } from "../../src/drawing/bend/drawBend";
import { toSvg } from "../../src/drawing/paper/toSvg";
import { TYPICAL_BENDS } from "../../src/drawing/bend/typicalBends";
import { strings } from "../strings";
import { BEND_KINDS, type BendChoice } from "./kinds";

/** Width of a small picture [px]. */
const WIDTH = 84;

/** The kinds of bend as pictures to choose from: one radio group, arrow keys move in it. */
export function KindPicker({ value, onChange }: { value: BendChoice["id"]; onChange(value: BendChoice["id"]): void }) {
  return (
    <fieldset className="rl-kinds">
      <legend>{strings.bend.which}</legend>
      {BEND_KINDS.map((kind) => (
        <label key={kind.id} className="rl-kind">
          <input
            type="radio"
            name="rl-kind"
            value={kind.id}
            checked={kind.id === value}
            onChange={() => onChange(kind.id)}
          />
          <KindPicture id={kind.id} />
          <span>{kind.title}</span>
        </label>
      ))}
    </fieldset>
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
