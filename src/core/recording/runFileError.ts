/** Why a text is not a run that can be opened. */
export type RunFileError =
  | { readonly kind: 'empty' }
  | { readonly kind: 'truncated'; readonly length: number }
  /** Begins as a run file and ends as one, but is no JSON in between. */
  | { readonly kind: 'garbled' }
  | { readonly kind: 'notJson' }
  /** JSON, but of another format; `format` is what it says it is, where it says so. */
  | { readonly kind: 'foreign'; readonly format: string | null }
  | { readonly kind: 'newer'; readonly version: number; readonly known: number }
  | { readonly kind: 'wrongShape'; readonly path: string; readonly fault: string }
  /** The content is not what its checksum was taken of. */
  | { readonly kind: 'damaged'; readonly written: string; readonly found: string }
  | { readonly kind: 'scenarioChanged'; readonly written: string; readonly found: string };

/** One sentence for a person: what is wrong, where, and what to do. */
export function runFileErrorWords(error: RunFileError): string {
  switch (error.kind) {
    case 'empty':
      return 'The file is empty; save the run again from the trainer.';
    case 'truncated':
      return `The run file ends in the middle, after ${error.length} characters; copy or download it again from where it was saved.`;
    case 'notJson':
      return 'The file is not readable as a run (it is not JSON); choose a file that the trainer saved.';
    case 'garbled':
      return 'The run file is damaged in the middle and no longer JSON; copy or download it again from where it was saved.';
    case 'foreign':
      return error.format === null
        ? 'This is not a run of this trainer; choose a file that the trainer saved.'
        : `This is not a run but a file of the kind “${plain(error.format)}”; choose a run that the trainer saved.`;
    case 'newer':
      return `The run was saved by a newer trainer (file version ${error.version}, this one reads up to ${error.known}); open it with that one.`;
    case 'wrongShape':
      return `The run file is not built as it should be: ${plain(error.path)} ${plain(error.fault)}; ask for the file as the trainer saved it.`;
    case 'damaged':
      return `The run file was changed after it was saved (its checksum is ${plain(error.written)}, its content gives ${error.found}); ask for the original.`;
    case 'scenarioChanged':
      return `The scenario inside the run file is not the one that was played (${error.found} instead of ${error.written}); ask for the original.`;
  }
}

const QUOTED_MAX = 300;

/** Words from a file, or about one, that leave the sentence around them whole: on one line, not long, without an end of their own. */
const plain = (words: string): string =>
  words.slice(0, QUOTED_MAX).replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').replace(/[.!?]+(?=\)?(?:\s|$))/g, ',').replace(/,(?=\)?$)/, '').replace(/;/g, ',');
