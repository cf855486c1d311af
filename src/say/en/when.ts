/** Days and times as a person at the bench says them, in the time zone of who reads. */

const DAY: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short' };
/** Made when it is first used: making one takes longer than drawing a page. */
const format = (options: Intl.DateTimeFormatOptions): ((then: Date) => string) => {
  let made: Intl.DateTimeFormat | null = null;
  return (then) => (made ??= new Intl.DateTimeFormat('en-GB', options)).format(then);
};
const short = format(DAY);
const long = format({ ...DAY, year: 'numeric' });
const clock = format({ hour: '2-digit', minute: '2-digit', hour12: false });
const plain = format({ year: 'numeric', month: '2-digit', day: '2-digit' });

/** `today`, `yesterday`, `10 Jun`, `10 Jun 2025`; of an instant (UTC ISO), beside now. */
export function sayDay(instant: string, now: Date): string {
  const then = new Date(instant);
  const yesterday = new Date(now);
  yesterday.setDate(now.getDate() - 1);
  if (plain(then) === plain(now)) return 'today';
  if (plain(then) === plain(yesterday)) return 'yesterday';
  return (then.getFullYear() === now.getFullYear() ? short : long)(then);
}

/** `14:05` */
export function sayTime(instant: string): string {
  return clock(new Date(instant));
}

/** `today 14:05` */
export function sayMoment(instant: string, now: Date): string {
  return `${sayDay(instant, now)} ${sayTime(instant)}`;
}
