const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const TIME = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** A moment as day and time of day: "24 Nov 2026, 15:04", in the reader's own time zone. */
export function dateText(iso: string): string {
  const moment = new Date(iso);
  return Number.isNaN(moment.getTime()) ? 'at an unknown time' : `${DAY.format(moment)}, ${TIME.format(moment)}`;
}
