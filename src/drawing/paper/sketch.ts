import { around, clipLine, overlap } from "./boxes";
import type { Anchor, Box, LineItem, SceneItem, LineStyle, Scene, Spot, TextItem, TextStyle } from "./scene";
import { LINE_HEIGHT, textBox, wrapText } from "./textBox";

/** Where a label may stand. */
export interface PagePlace {
  readonly at: Spot;
  readonly anchor: Anchor;
}

/** Air between the drawing and the edge of the page. */
export const EDGE = 4;

/** How much worse a unit off the page is than a unit on a line. */
const OFF_PAGE = 50;

/** Lines that a label should not lie on. */
const IN_THE_WAY: ReadonlySet<LineStyle> = new Set<LineStyle>([
  "conduit",
  "conduit-thin",
  "ghost",
  "dimension",
  "extension",
  "mark",
  "shape",
  "surface",
  "solid",
  "highlight",
]);

/** What a line may have besides its points and its style. */
type LineMore = Partial<Omit<LineItem, "kind" | "points" | "style">>;

/** A page being drawn. Its width is given; its height becomes what the drawing needs. */
export class Sketch {
  private readonly items: SceneItem[] = [];

  constructor(readonly width: number) {}

  line(points: readonly Spot[], style: LineStyle, more: LineMore = {}): void {
    const { closed = false, ...rest } = more;
    this.items.push({ kind: "line", points, closed, style, ...rest });
  }

  circle(center: Spot, radius: number, style: LineStyle): void {
    this.items.push({ kind: "circle", center, radius, style });
  }

  text(text: string, at: Spot, anchor: Anchor = "start", style: TextStyle = "text"): void {
    this.items.push({ kind: "text", text, at, anchor, style, box: textBox(text, at, anchor, style) });
  }

  /** Text at the first of its places that lies on nothing; where there is none, at the one that covers least. */
  label(text: string, places: readonly PagePlace[], style: TextStyle = "text"): void {
    const best = this.bestPlace(text, places, style);
    if (best) this.text(text, best.place.at, best.place.anchor, style);
  }

  /** As {@link label}, but leaves the text out where it would lie on something. True when it was put. */
  labelIfFree(text: string, places: readonly PagePlace[], style: TextStyle = "text"): boolean {
    const best = this.bestPlace(text, places, style);
    if (!best || best.cost > 0) return false;
    this.text(text, best.place.at, best.place.anchor, style);
    return true;
  }

  /** The first of some spots where a thing of `half` size each way lies on nothing, or the one where it covers least. */
  freeSpot(spots: readonly [Spot, ...Spot[]], half: number): Spot {
    const costs = spots.map(([x, y]) =>
      this.cover({ left: x - half, right: x + half, top: y - half, bottom: y + half }),
    );
    return spots[costs.indexOf(Math.min(...costs))] ?? spots[0];
  }

  private bestPlace(
    text: string,
    places: readonly PagePlace[],
    style: TextStyle,
  ): { place: PagePlace; cost: number } | undefined {
    let best: { place: PagePlace; cost: number } | undefined;
    for (const place of places) {
      const cost = this.cover(textBox(text, place.at, place.anchor, style));
      if (!best || cost < best.cost) best = { place, cost };
      if (cost === 0) break;
    }
    return best;
  }

  /** Sentences under everything drawn so far, parted to the page's width. */
  paragraph(text: string, style: TextStyle = "text", gap = 0): void {
    wrapText(text, this.width - 2 * EDGE, style).forEach((line, row) => {
      const top = this.bottom + (row === 0 ? gap : 0);
      this.text(line, [EDGE, top + EDGE + LINE_HEIGHT / 2], "start", style);
    });
  }

  /** Lowest edge of what has been drawn. */
  get bottom(): number {
    return this.items.length ? Math.max(...this.items.map((item) => boxOf(item).bottom)) : 0;
  }

  /** Boxes of the labels put so far. */
  get labels(): Box[] {
    return this.items.filter((item): item is TextItem => item.kind === "text").map(({ box }) => box);
  }

  /** The finished drawing, moved to the top of the page, or to the middle of a page at least so high. */
  finish(title: string, description: string, least = 0): Scene {
    const boxes = this.items.map(boxOf);
    const top = boxes.length ? Math.min(...boxes.map((box) => box.top)) : 0;
    const needed = this.bottom - top + 2 * EDGE;
    const height = Math.ceil(Math.max(least, needed));
    const items = this.items.map((item) => moveDown(item, EDGE - top + (height - needed) / 2));
    return { width: this.width, height, title, description, items };
  }

  /** How badly a label's box would lie on what is there: labels and the page's edges first, then lines. */
  private cover(box: Box): number {
    let cost = OFF_PAGE * (Math.max(0, 1 - box.left) + Math.max(0, box.right - this.width + 1));
    for (const item of this.items) {
      if (item.kind === "text") cost += overlap(box, item.box);
      else if (item.kind === "circle") cost += item.style === "centerline" ? 0 : overlap(box, boxOf(item)) / 4;
      else if (IN_THE_WAY.has(item.style)) cost += lengthInside(item.points, item.closed, box);
    }
    return cost;
  }
}

function lengthInside(points: readonly Spot[], closed: boolean, box: Box): number {
  let sum = 0;
  points.forEach((to, index) => {
    const from = index > 0 ? points[index - 1] : closed ? points.at(-1) : undefined;
    const part = from && clipLine(from, to, box);
    if (from && part) sum += (part.leave - part.enter) * Math.hypot(to[0] - from[0], to[1] - from[1]);
  });
  return sum;
}

export function boxOf(item: SceneItem): Box {
  if (item.kind === "text") return item.box;
  if (item.kind === "line") return around(item.points);
  const { center, radius } = item;
  return { left: center[0] - radius, right: center[0] + radius, top: center[1] - radius, bottom: center[1] + radius };
}

function moveDown(item: SceneItem, by: number): SceneItem {
  const down = ([x, y]: Spot): Spot => [x, y + by];
  if (item.kind === "line") return { ...item, points: item.points.map(down) };
  if (item.kind === "circle") return { ...item, center: down(item.center) };
  const box = { ...item.box, top: item.box.top + by, bottom: item.box.bottom + by };
  return { ...item, at: down(item.at), box };
}
