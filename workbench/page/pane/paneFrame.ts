import type { OfficeGlobals } from "../../office";

/** What this page supplies itself: Office.js, and the worksheet functions, which run in the grid. */
const supplied = /office-js\/|functions\.js$/;

/**
 * Opens the pane's own page in a frame: the files Excel loads, with this page's `Office` and `Excel` in place of
 * Office.js. Says so when the pane was not built.
 */
export async function openPaneFrame(area: HTMLElement, globals: OfficeGlobals): Promise<HTMLIFrameElement | null> {
  const address = new URL("../taskpane.html", location.href);
  const answer = await fetch(address);
  if (!answer.ok) {
    area.append(`The pane is not there (${answer.status}). Run npm run build.`);
    return null;
  }
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  // A parsed page resolves addresses against this one, so they are taken as they are written.
  const scripts = [...page.scripts].map((script) => {
    script.remove();
    return script.getAttribute("src") ?? "";
  });
  const base = page.createElement("base");
  base.href = address.href;
  page.head.prepend(base);

  const frame = document.createElement("iframe");
  frame.title = "Ledger pane";
  frame.srcdoc = `<!doctype html>${page.documentElement.outerHTML}`;
  const loaded = new Promise((resolve) => frame.addEventListener("load", resolve, { once: true }));
  area.append(frame);
  await loaded;
  Object.assign(frame.contentWindow!, globals);
  for (const src of scripts) if (!supplied.test(src)) await addScript(frame.contentDocument!, src);
  return frame;
}

/** `src` is relative to the pane's page, whose base the document has. */
function addScript(page: Document, src: string): Promise<unknown> {
  const script = page.createElement("script");
  const done = new Promise((resolve) => {
    script.addEventListener("load", resolve, { once: true });
    script.addEventListener("error", resolve, { once: true });
  });
  script.src = src;
  page.head.append(script);
  return done;
}
