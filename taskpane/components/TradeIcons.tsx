import type { ReactElement } from "react";

/** A line in the weight of the other icons. */
const icon = (shape: ReactElement): ReactElement => (
  <svg width="1em" height="1em" viewBox="0 0 20 20" fill="none" stroke="currentColor" strokeWidth="1.5" aria-hidden>
    {shape}
  </svg>
);

/** Conduit bent to 90°. */
export const BEND_ICON = icon(<path d="M2.5 16.5H9A7.5 7.5 0 0 0 16.5 9V2.5M2.5 13H9a4 4 0 0 0 4-4V2.5" />);

/** A run from box to box. */
export const ROUTE_ICON = icon(
  <>
    <path d="M4.5 14V9a3 3 0 0 1 3-3h5a3 3 0 0 1 3 3v5" />
    <path d="M2.5 14h4v4h-4zM13.5 14h4v4h-4z" />
  </>,
);
