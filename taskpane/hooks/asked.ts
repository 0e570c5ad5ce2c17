/** A window that holds the pane in a page of ours, which may ask it to show the part that reads drawings. */
export interface AskedWindow extends Window {
  /** How often it was asked. */
  ledgerDrawingAsked?: number;
}

/** Sent to the window when {@link AskedWindow.ledgerDrawingAsked} has changed. */
export const ASKED = "ledger-asked";
