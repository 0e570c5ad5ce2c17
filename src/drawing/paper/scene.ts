/**
 * A drawing before it is put in words of SVG: lines, circles and text in page units. One page unit is one CSS pixel at
 * the width the drawing was asked for; x runs right, y runs down. Items carry a style's name, never a color.
 */
export type Spot = readonly [x: number, y: number];

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type LineStyle =
  | "conduit" // outline of conduit drawn with its diameter
  | "conduit-thin" // conduit too small to show its diameter
  | "ghost" // conduit in another position
  | "halo" // gap where one conduit passes in front of another
  | "centerline"
  | "dimension"
  | "extension" // thin line from a thing to its dimension
  | "solid" // filled: arrowheads, star, couplings
  | "mark" // pencil mark, strap
  | "shape" // box, shoe, obstacle, bar
  | "surface" // what conduit is fastened to
  | "faint" // hatching
  | "highlight";

export type TextStyle = "text" | "strong";
export type Anchor = "start" | "middle" | "end";

export interface LineItem {
  readonly kind: "line";
  readonly points: readonly Spot[];
  readonly closed: boolean;
  readonly style: LineStyle;
  /** Stroke width, where the style's own will not do. */
  readonly width?: number;
  /** Kind among several that are told apart by color and dash, 1 for the first. */
  readonly hue?: number;
  /** What one points at here: a row of Runs. */
  readonly row?: number;
}

export interface CircleItem {
  readonly kind: "circle";
  readonly center: Spot;
  readonly radius: number;
  readonly style: LineStyle;
  readonly width?: number;
}

export interface TextItem {
  readonly kind: "text";
  readonly text: string;
  /** Where the text's anchor stands, halfway up the letters. */
  readonly at: Spot;
  readonly anchor: Anchor;
  readonly style: TextStyle;
  /** Room the text takes, on the wide side. */
  readonly box: Box;
}

export type SceneItem = LineItem | CircleItem | TextItem;

export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Name of the drawing, for those who cannot see it. */
  readonly title: string;
  /** What it shows, with its numbers, in sentences. */
  readonly description: string;
  readonly items: readonly SceneItem[];
}
