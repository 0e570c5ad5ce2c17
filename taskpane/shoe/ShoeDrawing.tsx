import { drawShoe } from "../../src/drawing/bench/drawShoe";
import type { Shoe } from "../../src/shop/shoe/shoe";
import { Drawing } from "../components/Drawing";
import { useWidth } from "../hooks/useWidth";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";

/** The shoe in use, to scale: arrow, star and notches, and where its numbers come from. */
export function ShoeDrawing({ shoe }: { shoe: Shoe }) {
  const units = useUnits();
  const [watch, width] = useWidth(296);
  return (
    <div ref={watch}>
      <Drawing scene={drawShoe(shoe, { name: `${shoe.raceway} ${shoe.size}`, width, show: units.show })} />
      <p className="rl-hint">{strings.shoe.source(shoe.source)}</p>
    </div>
  );
}
