import type { Shot } from '../painter.ts';

/** Begins the work of the worker that paints. */
export interface StartMessage {
  readonly kind: 'start';
  readonly canvas: OffscreenCanvas;
  readonly reducedMotion: boolean;
}

/** One frame to paint; of the picture only the news since the frame before. */
export interface ShotMessage {
  readonly kind: 'shot';
  readonly shot: Omit<Shot, 'picture'>;
  readonly news: unknown;
}

/** What the page tells the worker. */
export type StageRequest = StartMessage | ShotMessage;

/** What the worker tells the page. */
export type StageReply =
  | { readonly kind: 'ready' }
  | { readonly kind: 'painted' }
  | { readonly kind: 'failed'; readonly message: string };
