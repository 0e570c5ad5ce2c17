/** Reads a drawing back from its SVG text, so that what is measured is what is shown. */
import type { Scene } from "../../src/drawing/paper/scene";
import { toSvg } from "../../src/drawing/paper/toSvg";

export type XY = [x: number, y: number];

export interface Drawn {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** Lines of a style, as lists of points. */
  lines(style: string): XY[][];
  circles(style: string): { center: XY; radius: number }[];
  readonly texts: { text: string; at: XY }[];
}

export function readBack(scene: Scene): Drawn {
  const svg = toSvg(scene);
  const size = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  const points = (text: string): XY[] => text.split(" ").map((pair) => pair.split(",").map(Number) as XY);
  return {
    svg,
    width: Number(size?.[1]),
    height: Number(size?.[2]),
    lines: (style) =>
      [...svg.matchAll(new RegExp(`<poly(?:gon|line) class="rl-${style}" points="([^"]*)"`, "g"))].map((match) =>
        points(match[1]!),
      ),
    circles: (style) =>
      [...svg.matchAll(new RegExp(`<circle class="rl-${style}" cx="([^"]*)" cy="([^"]*)" r="([^"]*)"`, "g"))].map(
        (match) => ({
          center: [Number(match[1]), Number(match[2])],
          radius: Number(match[3]),
        }),
      ),
    texts: [...svg.matchAll(/<text class="[^"]*" x="([^"]*)" y="([^"]*)"[^>]*>([^<]*)</g)].map((match) => ({
      text: match[3]!,
      at: [Number(match[1]), Number(match[2])],
    })),
  };
}

export const apart = (a: XY, b: XY): number => Math.hypot(b[0] - a[0], b[1] - a[1]);
export const middleOf = (points: readonly XY[]): XY => [
  (points[0]![0] + points.at(-1)![0]) / 2,
  (points[0]![1] + points.at(-1)![1]) / 2,
];

/** A page unit of slack: coordinates are written to thousandths, and a person cannot see less than this. */
export const SEEN = 0.05;

/** Pairs of labels that lie over each other, and labels that leave the page, in words. */
export function labelFaults({ items, width, height }: Scene): string[] {
  const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
  const faults: string[] = [];
  texts.forEach((a, index) => {
    const { box } = a;
    if (box.left < 0 || box.right > width || box.top < 0 || box.bottom > height)
      faults.push(`"${a.text}" leaves the page`);
    for (const b of texts.slice(index + 1)) {
      const across = Math.min(box.right, b.box.right) - Math.max(box.left, b.box.left);
      const down = Math.min(box.bottom, b.box.bottom) - Math.max(box.top, b.box.top);
      if (across > 0.01 && down > 0.01) faults.push(`"${a.text}" over "${b.text}"`);
    }
  });
  return faults;
}

/** Lengths in plain inches, as tests need no others. */
export const inches = (value: number): string => `${Math.round(value * 16) / 16} in.`;
