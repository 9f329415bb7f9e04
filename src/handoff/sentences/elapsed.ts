// A stretch of time in words, in whole minutes and hours.

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** `47 minutes`, `1 hour 20 minutes`; null for less than a minute and for a time that lies ahead. Takes milliseconds. */
export function elapsed(milliseconds: number): string | null {
  const minutes = Math.floor(milliseconds / 60_000);
  if (minutes < 1) return null;
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return counted(rest, 'minute');
  return rest === 0 ? counted(hours, 'hour') : `${counted(hours, 'hour')} ${counted(rest, 'minute')}`;
}
