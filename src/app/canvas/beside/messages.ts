import type { Shot } from '../painter.ts';

/** Begins the work of the worker that paints. */
export interface StartMessage {
  readonly kind: 'start';
  readonly canvas: OffscreenCanvas;
  readonly reducedMotion: boolean;
}

/** One frame to paint; of its pictures only the news: of the previous one since the last one sent, of the current one since the previous. */
export interface ShotMessage {
  readonly kind: 'shot';
  readonly shot: Omit<Shot, 'previous' | 'current'>;
  /** Null when both are those of the frame before. */
  readonly pictures: { readonly previous: unknown; readonly current: unknown } | null;
}

/** What the page tells the worker. */
export type StageRequest = StartMessage | ShotMessage;

/** What the worker tells the page. */
export type StageReply =
  | { readonly kind: 'ready' }
  | { readonly kind: 'painted' }
  | { readonly kind: 'failed'; readonly message: string };
