/** Leads the focus to the heading of the page; a page that is loaded late calls it itself. */
export function focusHeading(): void {
  const heading = document.querySelector('h1');
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}
