/**
 * Work [the solver's steps] that one of several tasks may take. It depends on nothing the others do, so that a change in
 * one task leaves the plans of the others as they are; and hardly on how many there are, only on the next power of two.
 *
 * @example workShare(800, 5) //=> 100
 */
export const workShare = (work: number, tasks: number): number =>
  Math.floor(work / 2 ** Math.ceil(Math.log2(Math.max(1, tasks))));
