/** What a trial of this Excel asks of it: a sheet of its own, and what Excel says of itself. */
export * from "./about";
export * from "./looks";
export * from "./scratch";
