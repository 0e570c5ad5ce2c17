/** Where Microsoft serves Office.js; add-ins in production must load it from there. */
export const OFFICE_JS = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

const office = "https://appsforoffice.microsoft.com";

/**
 * What the pane's page may load: its own files and Office.js, nothing else, from nowhere else. Office.js puts a style
 * into the page itself, so styles may be inline; scripts may not, and no text is ever run as a script.
 */
export const PANE_POLICY = [
  "default-src 'none'",
  `script-src 'self' ${office}`,
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  `connect-src 'self' ${office}`,
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** What the page at the bender may load: its own files and nothing else. Styles may be inline, scripts may not. */
export const BENDER_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
