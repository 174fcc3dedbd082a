/** Days of the calendar in print, in the language of the papers. */

const written = new Map<string, Intl.DateTimeFormat>();

/** `14 March 2026` or `March 14, 2026`, by the language tag, from `2026-03-14`. */
export function printDay(iso: string, language: string): string {
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
