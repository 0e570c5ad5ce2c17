/** What Microsoft's Office.js sends to Excel, read off its requests: paths to objects, and what to do with them. */
export const ACTION = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 } as const;
export const PATH = { workbook: 1, method: 3, property: 4, indexer: 5, reference: 6 } as const;

export interface Arguments {
  Arguments?: unknown[];
  /** Ids of paths that stand in the place of arguments; 0 where an argument is a value. */
  ReferencedObjectPathIds?: (number | unknown[])[];
}

export interface Action {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: Arguments;
  QueryInfo?: { Select?: string[] };
}

export interface ObjectPath {
  Id: number;
  ObjectPathType: number;
  Name: string;
  ParentObjectPathId?: number;
  ArgumentInfo?: Arguments;
}

export interface Message {
  Actions: Action[];
  ObjectPaths: Record<string, ObjectPath>;
}

/** What Excel answers; a request that failed on the way has the results up to there. */
export interface Answer {
  Results: { ActionId: number; Value: unknown }[];
  Error?: { Code: string; Message: string; Location: string; ActionIndex: number };
}
