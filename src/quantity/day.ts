/** Days of the calendar in print, in the language of the papers. */

const english = 'January February March April May June July August September October November December';
const german = 'Januar Februar März April Mai Juni Juli August September Oktober November Dezember';

/** Writes a day of a month in a year. */
type Writing = (day: number, month: string, year: number) => string;

/** As the engine writes them, whose tables of all languages take longer to load than all the days of a run to write. */
const plain: Readonly<Record<string, readonly [months: readonly string[], write: Writing]>> = {
  'en-US': [english.split(' '), (day, month, year) => `${month} ${day}, ${year}`],
  'en-GB': [english.split(' '), (day, month, year) => `${day} ${month} ${year}`],
  de: [german.split(' '), (day, month, year) => `${day}. ${month} ${year}`],
};

const written = new Map<string, Intl.DateTimeFormat>();

/** `14 March 2026` or `March 14, 2026`, by the language tag, from `2026-03-14`. */
export function printDay(iso: string, language: string): string {
  const [year = 0, month = 0, day = 0] = iso.split('-').map(Number);
  const [months, write] = plain[language] ?? [];
  const name = months?.[month - 1];
  return write === undefined || name === undefined ? byEngine(iso, language) : write(day, name, year);
}

/** The same in any language that the engine knows. */
export function byEngine(iso: string, language: string): string {
  let format = written.get(language);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(language, {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
      timeZone: 'UTC',
    });
    written.set(language, format);
  }
  return format.format(new Date(`${iso}T00:00:00Z`));
}
