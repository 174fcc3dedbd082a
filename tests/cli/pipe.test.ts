import { PassThrough } from 'node:stream';
import { afterEach, expect, test, vi } from 'vitest';
import { endWhenNobodyReads } from '../../src/cli/pipe';

const failing = (code: string) => Object.assign(new Error(code), { code });
afterEach(() => vi.restoreAllMocks());

test('ends without a word when whoever reads has gone, asked for once or often', () => {
  const exit = vi.spyOn(process, 'exit').mockImplementation(() => undefined as never);
  const stream = new PassThrough();
  endWhenNobodyReads(stream);
  endWhenNobodyReads(stream);
  expect(stream.listenerCount('error')).toBe(1);
  stream.emit('error', failing('EPIPE'));
  expect(exit.mock.calls).toEqual([[0]]);
});

test('any other fault is no reason to be silent', () => {
  const stream = new PassThrough();
  endWhenNobodyReads(stream);
  expect(() => stream.emit('error', failing('ENOSPC'))).toThrow('ENOSPC');
});
