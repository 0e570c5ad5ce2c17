import { useCallback, useState } from "react";

/** Width of an element [px], followed as the pane is made wider or narrower; `fallback` where there is no layout. */
export function useWidth(fallback: number): [(element: HTMLElement | null) => void, number] {
  const [width, setWidth] = useState(fallback);
  const [observer] = useState(() =>
    typeof ResizeObserver === "undefined"
      ? undefined
      : new ResizeObserver(([entry]) => {
          const next = Math.floor(entry?.contentRect.width ?? 0);
          if (next > 0) setWidth(next);
        }),
  );
  const watch = useCallback(
    (element: HTMLElement | null) => {
      observer?.disconnect();
      if (element) observer?.observe(element);
    },
    [observer],
  );
  return [watch, width];
}
