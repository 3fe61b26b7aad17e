import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contentPolicyFaults } from '../../scripts/build/contentPolicyPlugin.ts';
import { serviceWorkerSource } from '../../scripts/build/offlinePlugin.ts';

const page = (policy: string, body = ''): string => `<html><head><meta http-equiv="Content-Security-Policy" content="${policy}" /></head><body>${body}<script type="module" src="./a.js"></script></body></html>`;

describe('The content policy of a built page', () => {
  it('is that of the page in src', () => {
    expect(contentPolicyFaults(readFileSync('src/index.html', 'utf8'))).toEqual([]);
  });

  it.each<[string, string, string]>([
    ['is missing', '<html><script src="a.js"></script></html>', 'has no Content-Security-Policy meta tag'],
    ['lets scripts come from anywhere', page("img-src 'self'"), "does not limit scripts to 'self'"],
    ['allows eval', page("script-src 'self' 'unsafe-eval'"), 'allows inline scripts or eval'],
    ['allows inline scripts', page("default-src 'none'; script-src 'self' 'unsafe-inline'"), 'allows inline scripts or eval'],
    ['forbids the page’s own inline script', page("script-src 'self'", '<script>start()</script>'), 'holds an inline script'],
    ['forbids the page’s own handler', page("script-src 'self'", '<p onclick="start()">'), 'holds an inline event handler'],
  ])('fails the build when it %s', (_case, html, fault) => {
    expect(contentPolicyFaults(html)).toEqual([fault]);
  });

  it('may allow inline styles', () => {
    expect(contentPolicyFaults(page("default-src 'self'; style-src 'self' 'unsafe-inline'"))).toEqual([]);
  });
});

describe('The service worker', () => {
  const template = 'v = __VERSION__; files = __FILES__;';
  const files = [
    { name: 'index.html', content: '<html>' },
    { name: 'assets/a-1.js', content: 'a()' },
    { name: '.vite/manifest.json', content: '{}' },
    { name: 'assets/a-1.js.map', content: '{}' },
  ];

  it('keeps what a page needs and nothing of the build itself', () => {
    expect(serviceWorkerSource(template, files)).toMatch(/^v = "[0-9a-f]{16}"; files = \["assets\/a-1.js","index.html"\];$/);
  });

  it('is another version exactly when a file is another', () => {
    const same = serviceWorkerSource(template, [...files].reverse());
    expect(same).toBe(serviceWorkerSource(template, files));
    expect(serviceWorkerSource(template, [{ name: 'index.html', content: '<html lang="en">' }, ...files.slice(1)])).not.toBe(same);
    expect(serviceWorkerSource(template, [...files, { name: 'assets/b.js', content: 'b()' }])).not.toBe(same);
  });

  it('is made from a template with both places', () => {
    const source = readFileSync('scripts/build/serviceWorker.js', 'utf8');
    expect(source.match(/__VERSION__|__FILES__/g)).toEqual(['__VERSION__', '__FILES__']);
    expect(source.replaceAll(/\/\*[^]*?\*\//g, '')).not.toContain('skipWaiting');
  });
});
