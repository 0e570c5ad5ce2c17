/** Where this page keeps things between visits: the browser's database and the store in it. */
export const bookDatabase = ["raceway-ledger", "workbooks"] as const;
