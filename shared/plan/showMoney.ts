// Amounts of money as they are read.

/**
 * `€ 12.40`, `EUR 1,204.50`, `−€ 3.00`. Cents are kept, and thousands parted from four figures on.
 *
 * @param currency - what stands before the amount, a symbol or a code
 */
export function showMoney(amount: number, currency: string): string {
  const [whole = '', cents = ''] = Math.abs(amount).toFixed(2).split('.');
  const parted = whole.replaceAll(/(?<=\d)(?=(?:\d{3})+$)/g, ',');
  const minus = amount < 0 && Number(`${whole}.${cents}`) !== 0 ? '−' : '';
  return `${minus}${currency} ${parted}.${cents}`;
}
