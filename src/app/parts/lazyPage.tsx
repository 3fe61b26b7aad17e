import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { focusHeading } from './focusHeading.ts';

interface LazyPageWords<Props> {
  /** Said while the page is loaded. */
  readonly waiting: string;
  /** Said when it could not be loaded, with what to do. */
  readonly failed: string;
  /** The way back from there: words of the button, and what it does. */
  readonly back: string;
  readonly onBack: (props: Props) => void;
}

interface LazyPage<Props> {
  readonly Page: FunctionComponent<Props>;
  /** Loads it ahead; what is loaded is shown at once. Rejects when it cannot be loaded. */
  readonly load: () => Promise<void>;
}

/** A page whose script is loaded when somebody goes to it, so that the first page does not wait for it. */
export function lazyPage<Props extends object>(fetchPage: () => Promise<FunctionComponent<Props>>, words: LazyPageWords<Props>): LazyPage<Props> {
  let Loaded: FunctionComponent<Props> | null = null;
  const load = async (): Promise<void> => {
    Loaded ??= await fetchPage();
  };
  const Page = (props: Props) => {
    const [state, setState] = useState<'waiting' | 'ready' | 'failed'>(Loaded ? 'ready' : 'waiting');
    useEffect(() => {
      if (state === 'waiting') load().then(() => setState('ready'), () => setState('failed'));
    }, []);
    useEffect(() => {
      if (state !== 'waiting') focusHeading();
    }, [state]);
    if (state === 'ready' && Loaded) return <Loaded {...props} />;
    if (state !== 'failed') return <p class="report-wait">{words.waiting}</p>;
    return (
      <main class="report-wait">
        <p>{words.failed}</p>
        <button onClick={() => words.onBack(props)}>{words.back}</button>
      </main>
    );
  };
  return { Page, load };
}
