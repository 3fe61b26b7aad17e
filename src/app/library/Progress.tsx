import { useEffect, useState } from 'preact/hooks';

/** Tells how far some work is to whoever watches it, so that only that is drawn again. */
export class ShareTeller {
  private readonly watchers = new Set<(share: number) => void>();

  readonly tell = (share: number): void => {
    for (const watcher of this.watchers) watcher(share);
  };

  /** Gives what takes the watcher off. */
  watch(watcher: (share: number) => void): () => void {
    this.watchers.add(watcher);
    return () => this.watchers.delete(watcher);
  }
}

/** How far an action is. */
export function Progress({ teller }: { readonly teller: ShareTeller }) {
  const [share, setShare] = useState(0);
  useEffect(() => teller.watch(setShare), [teller]);
  return (
    <label>
      Working <progress max={1} value={share} />
    </label>
  );
}
