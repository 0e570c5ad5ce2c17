/** @jest-environment jsdom */
import { drawCounts } from "../../../src/drawing/job/drawCounts";
import { drawCuts } from "../../../src/drawing/job/drawCuts";
import { drawBend } from "../../../src/drawing/bend/drawBend";
import { drawStick } from "../../../src/drawing/bench/drawStick";
import { DRAWING_CSS } from "../../../src/drawing/paper/drawingCss";
import { toSvg } from "../../../src/drawing/paper/toSvg";
import { TYPICAL_BENDS } from "../../../src/drawing/bend/typicalBends";
import { inches } from "../measure";

const NASTY = `<script>alert("x")</script> & 'B' ]]> \u0007`;
const parse = (svg: string): Document => new DOMParser().parseFromString(svg, "image/svg+xml");
const drawings = [
  drawCounts([{ label: NASTY, count: 3 }], { title: NASTY }),
  drawCuts([{ length: 120, count: 1, label: NASTY, pieces: [{ length: 110, count: 1, label: NASTY }], remnant: 10 }], {
    title: NASTY,
    show: () => NASTY,
  }),
  drawStick({ name: NASTY, cutLength: 40, marks: [] }, { show: () => NASTY }),
];

test("user text is text: markup in it does nothing, and the drawing stays well-formed", () => {
  for (const drawing of drawings) {
    const page = parse(toSvg(drawing));
    expect(page.querySelector("parsererror")).toBeNull();
    expect(page.querySelector("script")).toBeNull();
    expect(page.querySelector("title")?.textContent).toContain(`<script>alert("x")</script> & 'B' ]]>`);
  }
});

test("a label reads back as it was given", () => {
  const page = parse(toSvg(drawCounts([{ label: `A<B&"C"`, count: 1 }], { title: "t" })));
  expect([...page.querySelectorAll("text")].map((text) => text.textContent)).toContain(`A<B&"C"`);
});

test.each(TYPICAL_BENDS)("$shape.kind: a picture with a name, no ids, no colors, no style of its own", (bend) => {
  const svg = toSvg(drawBend(bend, { show: inches }));
  const page = parse(svg);
  expect(page.documentElement.getAttribute("role")).toBe("img");
  expect(page.querySelector("title")?.textContent?.toLowerCase()).toBe(bend.shape.kind);
  expect(page.querySelector("desc")?.textContent).toMatch(/\d/);
  expect(page.querySelector("[id], style, [style], [fill], [stroke]")).toBeNull();
});

test("standalone brings its size and its looks along", () => {
  const scene = drawCounts([{ label: "kick", count: 2 }], { title: "Bends", width: 450 });
  const svg = toSvg(scene, { standalone: true });
  expect(svg).toContain(`width="450" height="${scene.height}"`);
  expect(parse(svg).querySelector("style")?.textContent).toBe(DRAWING_CSS);
});

test("every class a drawing uses has its looks, and the looks name no fixed color", () => {
  const classes = new Set(
    [...drawings, ...TYPICAL_BENDS.map((bend) => drawBend(bend, { show: inches }))].flatMap((drawing) =>
      [...toSvg(drawing).matchAll(/class="rl-([a-z-]+)"/g)].map((match) => match[1]!),
    ),
  );
  expect(classes.size).toBeGreaterThan(8);
  // The hues that tell runs apart have a color each, with a dash; tests/drawing/job holds their contrast.
  const others = DRAWING_CSS.replace(/^\.rl-drawing \.rl-hue-\d .*$/gm, "");
  expect(others).not.toMatch(/#[0-9a-f]{3}|rgb|black|white/i);
});
