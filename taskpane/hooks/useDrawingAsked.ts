import { useEffect, useState } from "react";
import { ASKED, type AskedWindow } from "./asked";

/** How often the page around the pane asked for the part that reads drawings; 0 in Excel, which has no File menu of ours. */
export function useDrawingAsked(onAsked: () => void): number {
  const count = () => (window as AskedWindow).ledgerDrawingAsked ?? 0;
  const [asked, setAsked] = useState(count);
  useEffect(() => {
    const listen = () => {
      setAsked(count());
      onAsked();
    };
    window.addEventListener(ASKED, listen);
    return () => window.removeEventListener(ASKED, listen);
  }, [onAsked]);
  return asked;
}
