const FORMAT = new Intl.NumberFormat("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 3 });

/**
 * An amount of money as it is read: cents always, a third decimal where there is one; no currency is assumed.
 * @example showMoney(1155.4) //=> "1,155.40"
 */
export const showMoney = (amount: number): string => FORMAT.format(amount);
