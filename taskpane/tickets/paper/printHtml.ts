import { saveText } from "../../components/saveText";

/** Opens the print window on a page of HTML, from a frame nobody sees: the pane itself is not printed. */
export function printHtml(html: string): void {
  document.getElementById(FRAME)?.remove();
  const frame = document.createElement("iframe");
  frame.id = FRAME;
  frame.setAttribute("aria-hidden", "true");
  frame.tabIndex = -1;
  frame.style.cssText = "position: fixed; width: 0; height: 0; border: 0;";
  frame.srcdoc = html;
  frame.onload = () => {
    const page = frame.contentWindow;
    // Removed too early, the frame takes the print window with it.
    page?.addEventListener("afterprint", () => setTimeout(() => frame.remove()));
    page?.focus();
    page?.print();
  };
  document.body.append(frame);
}

const FRAME = "rlt-print";

/** Hands a page of HTML to the browser as a download. */
export const saveHtml = (html: string, name: string): void => saveText(html, name, "text/html");
