let ctx: CanvasRenderingContext2D | null = null;
const known = new Map<string, number>();

/** Width of words on the screen, in CSS pixels. `font` as in a style sheet, such as "600 16px". */
export function textWidth(words: string, font: string): number {
  const key = `${font} ${words}`;
  let wide = known.get(key);
  if (wide === undefined) {
    ctx ??= document.createElement('canvas').getContext('2d')!;
    ctx.font = `${font} 'Source Sans 3 Variable', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif`;
    wide = ctx.measureText(words).width;
    if (document.fonts.status === 'loaded') known.set(key, wide);
  }
  return wide;
}
