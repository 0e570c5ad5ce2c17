/** What stands on every ticket, whoever made it. */
export const TICKET_CAUTIONS: readonly string[] = [
  "The bender crushes and pinches, and the free end swings. Keep hands and people clear while it moves.",
  "Wear eye and hand protection. Support long ends so that neither conduit nor machine tips.",
  "Disconnect the power before changing a shoe or clearing a jam.",
  "Make a test bend first: it shows whether the shoe's numbers on this ticket are right.",
  "A planning aid. The local electrical code, the inspector and a licensed electrician decide.",
];
