/** Where a run of all checks leaves what it found. */
export const REPORTS = '.cache/reports';
export const STAGES_FILE = `${REPORTS}/stages.json`;
export const UNIT_REPORT = `${REPORTS}/unit.json`;
export const BROWSER_REPORT = `${REPORTS}/browser.json`;
