import type { Scene } from "../../src/drawing/paper/scene";
import { Drawing } from "../components/Drawing";
import { useWidth } from "../hooks/useWidth";
import { bentScene, straightScene } from "./measureScenes";

export const StickPicture = () => <Picture draw={straightScene} />;

export const BentPicture = () => <Picture draw={bentScene} />;

function Picture({ draw }: { draw(width: number): Scene }) {
  const [watch, width] = useWidth(270);
  return (
    <div ref={watch}>
      <Drawing scene={draw(width)} />
    </div>
  );
}
