import { useRef } from 'preact/hooks';

interface OpenFileProps {
  readonly trouble: string | null;
  readonly onFile: (file: File) => void;
}

/** Opens a run that was saved, or a scenario of one's own; dropping a file on the page does the same. */
export function OpenFile({ trouble, onFile }: OpenFileProps) {
  const input = useRef<HTMLInputElement>(null);
  const chosen = (): void => {
    const file = input.current?.files?.[0];
    if (file) onFile(file);
    if (input.current) input.current.value = '';
  };
  return (
    <section class="open-file" aria-labelledby="open-head">
      <h2 id="open-head">Open a file</h2>
      <p class="open-row">
        <button onClick={() => input.current?.click()}>Choose a file</button>
        <span class="small">A saved run, to see its report, or a scenario of your own. You can also drop it on this page.</span>
      </p>
      <input ref={input} type="file" class="unseen" tabIndex={-1} aria-label="Run or scenario file" accept=".json,.gz,application/json,application/gzip" onChange={chosen} />
      <p class="trouble" role="alert">
        {trouble}
      </p>
    </section>
  );
}
