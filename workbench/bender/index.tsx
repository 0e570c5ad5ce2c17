import { createRoot } from "react-dom/client";
import { DRAWING_CSS } from "../../src/drawing/paper/drawingCss";
import { App } from "./App";
import "./page.css";

const place = document.getElementById("bender");
if (place) {
  createRoot(place).render(
    <>
      <style>{DRAWING_CSS}</style>
      <App />
    </>,
  );
}

// Kept by the browser, the page opens without a network from the second time on.
if ("serviceWorker" in navigator) void navigator.serviceWorker.register("sw.js").catch(() => undefined);
