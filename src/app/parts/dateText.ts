/** A moment as day and time of day: "24 Nov 2026, 15:04", in the reader's own time zone. */
export function dateText(iso: string): string {
  const moment = new Date(iso);
  if (Number.isNaN(moment.getTime())) return 'at an unknown time';
  const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' }).format(moment);
  const time = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(moment);
  return `${day}, ${time}`;
}
