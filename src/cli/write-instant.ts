/** An instant for people, in the time of this machine, to the minute: `2026-03-01 09:30`. */
export function writeInstant(instant: string): string {
  const local = Temporal.Instant.from(instant).toZonedDateTimeISO(Temporal.Now.timeZoneId());
  return local.toPlainDateTime().toString({ smallestUnit: 'minute' }).replace('T', ' ');
}
