/** "drape, left side, 34 cm from the opening" without the exact stretch, which is of no use to a reader. */
export const roughWords = (words: string): string => words.replace(/, \d+ cm from the \w+$/, '');
