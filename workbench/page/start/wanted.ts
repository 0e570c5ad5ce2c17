/** What the page's address asks for: `?job=demo` the demo job, `?job=new` a set-up job of one's own; null for neither. */
export type Wanted = "demo" | "new" | null;

/** Reads the wish, and takes it out of the address: a reload opens the work that came of it. */
export function takeWish(): Wanted {
  const address = new URL(location.href);
  const job = address.searchParams.get("job");
  if (job !== "demo" && job !== "new") return null;
  address.searchParams.delete("job");
  history.replaceState(null, "", address);
  return job;
}
