/** One sentence for a person about why the browser does not keep runs, from what IndexedDB threw. */
export function storeFault(error: unknown): string {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'VersionError') return 'The runs kept in this browser belong to a newer trainer and are left as they are; save each run as a file.';
  if (name === 'QuotaExceededError') return 'The browser has no room left to keep another run; export and delete old ones, and save the one being played as a file when it ends.';
  if (name === 'InvalidStateError') return 'The browser closed its store of runs (a newer trainer in another window or cleared site data may be the reason); save this run as a file when it ends.';
  return 'This browser does not let the trainer keep runs (a private window may be the reason); save each run as a file when it ends.';
}

/** The record of the run vanished or was changed while it was played. */
export const INTERRUPTED = 'The kept part of this run was changed from elsewhere, so it is no longer written along; save it as a file when it ends.';
