// The code to join: it comes back as it went, fits a QR symbol, and a damaged one is refused with what is wrong.

import { nkeys } from '@nats-io/nats-core';
import { encodeQR } from 'qr';
import { describe, expect, it } from 'vitest';
import { type JoinCode, joinText, random, readJoinText } from '../../src/link/index.ts';

const code: JoinCode = {
  address: 'https://post.invalid:8420/',
  incident: '2c801ddae3',
  device: 'rae-1',
  name: 'Rae Örn',
  seed: new TextDecoder().decode(nkeys.createUser().getSeed()),
  key: random(32),
};

describe('a code', () => {
  it('comes back as it went, with spaces around it too', () => {
    expect(readJoinText(`  ${joinText(code)}\n`)).toEqual({ kind: 'code', code });
  });

  it('holds its secrets after the hash only, which a browser sends to nobody', () => {
    const url = new URL(joinText(code));
    expect(`${url.origin}${url.pathname}${url.search}`).toBe(code.address);
  });

  it('fits a QR symbol that a phone reads from a screen', () => {
    // ISO/IEC 18004: version 15 has 77 squares a side; that a phone reads it at arm's length is common practice, no source.
    expect(encodeQR(joinText(code), 'raw', { ecc: 'medium', border: 1 }).length).toBeLessThanOrEqual(77 + 2);
  });

  const text = joinText(code);
  const packed = (change: (parts: string[]) => void): string => {
    const [before = '', after = ''] = text.split('#join=');
    const parts = JSON.parse(Buffer.from(after, 'base64url').toString('utf8'));
    change(parts);
    return `${before}#join=${Buffer.from(JSON.stringify(parts)).toString('base64url')}`;
  };
  it.each([
    ['nothing', '', 'has no part after'],
    ['another address', 'https://post.invalid/about', 'has no part after'],
    [
      'an address of another kind',
      text.replace('https:', 'file:'),
      'does not begin with the address of a post',
    ],
    ['a cut one', text.slice(0, -9), 'was cut off or mistyped'],
    ['one with a sign that is none', `${text}!`, 'was cut off or mistyped'],
    [
      'one of another version',
      packed((parts) => parts.splice(0, 1, 'fieldsay-join/9')),
      'is of another version',
    ],
    [
      'one whose device could be a pattern',
      packed((parts) => parts.splice(2, 1, '*')),
      'the device is not named',
    ],
    [
      'one whose incident has a dot',
      packed((parts) => parts.splice(1, 1, 'a.b')),
      'the incident is not named',
    ],
    ['one with a short key', packed((parts) => parts.splice(5, 1, 'AAAA')), 'key is damaged'],
    ['one with a damaged credential', packed((parts) => parts.splice(4, 1, 'SUAB')), 'credential is damaged'],
  ])('is refused where it is %s', (_name, wrong, why) => {
    const read = readJoinText(wrong);
    expect(read.kind === 'refused' ? read.why : read.kind).toContain(why);
  });
});
