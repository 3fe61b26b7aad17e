import type { Backend } from './backend.ts';

export type RendererChoice = 'auto' | 'canvas' | 'webgl';
const SOFTWARE = /swiftshader|llvmpipe|software|basic render/i;

/** Loads only what the chosen way of drawing needs. WebGL that runs on the processor is slower than the 2D canvas. */
export async function chooseBackend(choice: RendererChoice): Promise<Backend> {
  const webgl = choice === 'webgl' || (choice === 'auto' && hasFastWebgl());
  if (!webgl) return (await import('./canvasBackend.ts')).createBackend();
  try {
    return await (await import('./webglBackend.ts')).createBackend();
  } catch {
    return (await import('./canvasBackend.ts')).createBackend();
  }
}

function hasFastWebgl(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  if (gl === null) return false;
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(info === null ? gl.RENDERER : info.UNMASKED_RENDERER_WEBGL));
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return !SOFTWARE.test(name);
}
