import type { ComponentChild, VNode } from 'preact';
import { describe, expect, it, vi } from 'vitest';
import { StationChoice } from '../../../src/app/start/StationChoice.tsx';
import { withField } from '../../../src/core/scenario/followedByField.ts';
import { LOADING } from '../support/scenario.ts';

interface Drawn {
  readonly type: unknown;
  readonly props: { readonly children?: ComponentChild | ComponentChild[]; readonly checked?: boolean; readonly onChange?: () => void };
}

/** Everything drawn, at any depth. */
function all(node: unknown): Drawn[] {
  if (Array.isArray(node)) return node.flatMap(all);
  if (typeof node !== 'object' || node === null) return [];
  const drawn = node as Drawn;
  return [drawn, ...all(drawn.props.children)];
}
const textOf = (node: unknown): string => (Array.isArray(node) ? node.map(textOf).join('') : typeof node === 'string' ? node : typeof node === 'object' && node !== null ? textOf((node as Drawn).props.children) : '');
const choices = (value: boolean, onChange = vi.fn()) => {
  const drawn = all(StationChoice({ value, onChange }) as VNode);
  return { labels: drawn.filter(({ type }) => type === 'label').map(textOf), inputs: drawn.filter(({ type }) => type === 'input'), onChange };
};

describe('How far a run goes', () => {
  it('is loading alone, or on into the field', () => {
    expect(choices(false).labels).toEqual(['Loading alone', 'then on into the field']);
  });

  it('shows what is chosen and tells what is wanted', () => {
    expect(choices(false).inputs.map(({ props }) => props.checked)).toEqual([true, false]);
    expect(choices(true).inputs.map(({ props }) => props.checked)).toEqual([false, true]);
    const { inputs, onChange } = choices(false);
    inputs[1]!.props.onChange!();
    inputs[0]!.props.onChange!();
    expect(onChange.mock.calls).toEqual([[true], [false]]);
  });

  it('changes the stations of the run and nothing else, and nothing at all where the scenario says so already', () => {
    const both = withField(LOADING, true);
    expect(both).toEqual({ ...LOADING, followedBy: ['field'] });
    expect(withField(both, true)).toBe(both);
    expect(withField(both, false)).toEqual(LOADING);
    expect(withField(LOADING, false)).toBe(LOADING);
  });
});
