/** Name and version of the JavaScript engine, as far as the browser tells; written into recordings for tracing differences. */
export function engineName(userAgent: string): string {
  const v8 = /Chrom(?:e|ium)\/(\d+)/.exec(userAgent);
  if (v8) return `V8 ${v8[1]}`;
  const gecko = /Firefox\/(\d+)/.exec(userAgent);
  if (gecko) return `SpiderMonkey ${gecko[1]}`;
  const webkit = /Version\/(\d+(?:\.\d+)?).*Safari/.exec(userAgent);
  return webkit ? `JavaScriptCore ${webkit[1]}` : 'unknown';
}
