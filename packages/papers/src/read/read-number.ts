/** How decimals are written where a number stands: with a comma (files with semicolons), with a point, or nobody knows (text in a workbook). */
export type Decimals = 'comma' | 'point' | 'either';

/**
 * A number with decimal point or comma. Blanks, apostrophes and the other sign may part thousands, in full groups of three only.
 * What may be read both ways is asked: `1,234` where decimals have a point, `1.234` where they have a comma, both where nobody knows.
 */
export function readNumber(digits: string, decimals: Decimals): number | 'ambiguous' | undefined {
  const text = digits.trim().replace(/(?<=\d)[\s'’](?=\d{3}(?!\d))/g, '');
  if (/[^\d.,+-]/.test(text)) return undefined;
  const commas = text.split(',').length - 1;
  const points = text.split('.').length - 1;
  if (commas > 0 && points > 0) {
    const [sign, parting] = text.lastIndexOf(',') > text.lastIndexOf('.') ? [',', '.'] : ['.', ','];
    const [whole = '', fraction = '', ...more] = text.split(sign);
    return more.length > 0 || !isGrouped(whole, parting) ? undefined : Number(`${whole.replaceAll(parting, '')}.${fraction}`);
  }
  const sign = commas > 0 ? ',' : '.';
  if (commas + points > 1) return isGrouped(text, sign) ? Number(text.replaceAll(sign, '')) : undefined;
  const usual = { comma: ',', point: '.', either: '' }[decimals];
  if (sign !== usual && /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/.test(text)) return 'ambiguous';
  const value = Number(text.replace(',', '.'));
  return /\d/.test(text) && Number.isFinite(value) ? value : undefined;
}

const isGrouped = (text: string, sign: string) =>
  /^[+-]?\d{1,3}$/.test(text.split(sign)[0]!) &&
  text
    .split(sign)
    .slice(1)
    .every((group) => /^\d{3}$/.test(group));
