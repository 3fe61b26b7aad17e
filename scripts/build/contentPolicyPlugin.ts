import type { Plugin } from 'vite';

/** What is wrong with the content policy of a built page, in words; empty when it is strict. */
export function contentPolicyFaults(html: string): string[] {
  const faults: string[] = [];
  const tag = /<meta[^>]*http-equiv=["']content-security-policy["'][^>]*>/i.exec(html)?.[0];
  const policy = tag ? (/content="([^"]*)"/i.exec(tag)?.[1] ?? '') : '';
  if (!tag) faults.push('has no Content-Security-Policy meta tag');
  else if (!/(?:^|;)\s*(?:default|script)-src\s[^;]*'self'/.test(policy)) faults.push("does not limit scripts to 'self'");
  const scripts = /(?:^|;)\s*script-src\s([^;]*)/.exec(policy)?.[1] ?? '';
  if (/'unsafe-(?:inline|eval)'/.test(scripts)) faults.push('allows inline scripts or eval');
  if (/<script(?![^>]*\ssrc=)[^>]*>/i.test(html)) faults.push('holds an inline script');
  if (/\son[a-z]+\s*=\s*["']/i.test(html)) faults.push('holds an inline event handler');
  return faults;
}

/** Fails the build when a page in it lacks a strict content policy. */
export function contentPolicyPlugin(): Plugin {
  return {
    name: 'content-policy',
    apply: 'build',
    enforce: 'post',
    generateBundle(_options, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type !== 'asset' || !file.fileName.endsWith('.html')) continue;
        const faults = contentPolicyFaults(String(file.source));
        if (faults.length > 0) this.error(`${file.fileName} ${faults.join(', ')}.`);
      }
    },
  };
}
