import type { Scene } from "../../src/drawing/paper/scene";
import { toSvg } from "../../src/drawing/paper/toSvg";
import { strings } from "../strings";

/** A drawing of src/drawing, with the words for those who cannot see it one keystroke away. */
export function Drawing({ scene }: { scene: Scene }) {
  return (
    <figure className="rl-figure">
      {/* toSvg escapes every text it is given. */}
      <div dangerouslySetInnerHTML={{ __html: toSvg(scene) }} />
      <details className="rl-words">
        <summary>{strings.common.inWords}</summary>
        <p>{scene.description}</p>
      </details>
    </figure>
  );
}
