const DATE = /^\d{4}-\d{2}-\d{2}$/;
const DAY = 24 * 60 * 60 * 1000;

/** `2026-03-02, 91 days ago`; the text alone where it is no date. */
export function ageWords(date: string, today: string): string {
  const days = DATE.test(date) ? Math.round((Date.parse(today) - Date.parse(date)) / DAY) : Number.NaN;
  if (Number.isNaN(days)) return date;
  if (days === 0) return `${date}, today`;
  return days > 0 ? `${date}, ${span(days)} ago` : `${date}, in ${span(-days)}`;
}

export function isDate(text: string): boolean {
  return DATE.test(text);
}

function span(days: number): string {
  if (days === 1) return '1 day';
  return days < 730 ? `${days} days` : `${(days / 365.25).toFixed(1)} years`;
}
