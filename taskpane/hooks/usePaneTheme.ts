import { teamsHighContrastTheme, webDarkTheme, webLightTheme, type Theme } from "@fluentui/react-components";
import { useEffect, useState } from "react";

const DARK = "(prefers-color-scheme: dark)";
const CONTRAST = "(forced-colors: active)";

/** The theme of Office, or of the browser where Office does not say; follows changes. */
export function usePaneTheme(): Theme {
  const [theme, setTheme] = useState(currentTheme);
  useEffect(() => {
    const update = () => setTheme(currentTheme());
    const queries = [DARK, CONTRAST].map((query) => window.matchMedia?.(query));
    queries.forEach((query) => query?.addEventListener("change", update));
    // Office has no event for it in Excel: the pane looks again whenever the person comes back to it.
    window.addEventListener("focus", update);
    return () => {
      queries.forEach((query) => query?.removeEventListener("change", update));
      window.removeEventListener("focus", update);
    };
  }, []);
  return theme;
}

function currentTheme(): Theme {
  if (matches(CONTRAST)) return teamsHighContrastTheme;
  return isDark() ? webDarkTheme : webLightTheme;
}

function isDark(): boolean {
  const background = globalThis.Office?.context?.officeTheme?.bodyBackgroundColor;
  return background ? luminance(background) < 0.5 : matches(DARK);
}

const matches = (query: string): boolean => window.matchMedia?.(query).matches ?? false;

/** Lightness of #RRGGBB, 0 black to 1 white. */
function luminance(color: string): number {
  const value = parseInt(color.replace("#", ""), 16);
  if (!Number.isFinite(value)) return 1;
  return (0.299 * ((value >> 16) & 255) + 0.587 * ((value >> 8) & 255) + 0.114 * (value & 255)) / 255;
}
