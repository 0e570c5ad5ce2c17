import { createRoot } from "react-dom/client";
import { App } from "./App";
import "./pane.css";

/** Shows the pane in an element of a page where Office and Excel (or objects of their shape) are ready. */
export function mountPane(place: HTMLElement): void {
  createRoot(place).render(<App />);
}
