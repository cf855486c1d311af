/** Days and times as a person at the bench says them, in the time zone of who reads. */

const DAY: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short' };
const format = (options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat => new Intl.DateTimeFormat('en-GB', options);
const short = format(DAY);
const long = format({ ...DAY, year: 'numeric' });
const clock = format({ hour: '2-digit', minute: '2-digit', hour12: false });
const plain = format({ year: 'numeric', month: '2-digit', day: '2-digit' });

/** `today`, `yesterday`, `10 Jun`, `10 Jun 2025`; of an instant (UTC ISO), beside now. */
export function sayDay(instant: string, now: Date): string {
  const then = new Date(instant);
  const yesterday = new Date(now);
  yesterday.setDate(now.getDate() - 1);
  if (plain.format(then) === plain.format(now)) return 'today';
  if (plain.format(then) === plain.format(yesterday)) return 'yesterday';
  return (then.getFullYear() === now.getFullYear() ? short : long).format(then);
}

/** `14:05` */
export function sayTime(instant: string): string {
  return clock.format(new Date(instant));
}

/** `today 14:05` */
export function sayMoment(instant: string, now: Date): string {
  return `${sayDay(instant, now)} ${sayTime(instant)}`;
}
