// The post's address: the page for everybody, the board for whoever has its address, and no file of the machine besides.

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FeedLine } from '../../src/link/index.ts';
import { fileFor } from '../../src/post/web/files.ts';
import { serve, type Web } from '../../src/post/web/serve.ts';
import { openWeb, pageHandle } from '../../src/post/web/web.ts';
import { allAtPost, HINDRANCE, openPhone, openScene, type Scene } from './scene.ts';

const folder = mkdtempSync(join(tmpdir(), 'fieldsay-web-'));
mkdirSync(join(folder, 'page/assets'), { recursive: true });
writeFileSync(join(folder, 'page/index.html'), '<title>invented</title>');
writeFileSync(join(folder, 'page/assets/a-1.js'), '1;');
writeFileSync(join(folder, 'secret.txt'), 'secret');
afterAll(() => rmSync(folder, { recursive: true }));

describe('a path', () => {
  it.each([
    ['/', 'index.html'],
    ['/assets/a-1.js', 'assets/a-1.js'],
    ['/../secret.txt', 'secret.txt'],
    ['/%2e%2e/secret.txt', 'secret.txt'],
    ['/assets/../../../secret.txt', 'secret.txt'],
    ['//etc/passwd', 'etc/passwd'],
  ])('%s stays within the page’s folder', (path, inside) => {
    expect(fileFor('/page', path)).toBe(`/page/${inside}`);
  });

  it.each(['/%00', '/%E0%A4%A'])('%s means no file', (path) => {
    expect(fileFor('/page', path)).toBeNull();
  });
});

describe('over https', () => {
  it('the page is given under a certificate that is handed in', async ({ skip }) => {
    const [key, cert] = [join(folder, 'key.pem'), join(folder, 'cert.pem')];
    try {
      const made = [
        'req',
        '-x509',
        '-newkey',
        'ec',
        '-pkeyopt',
        'ec_paramgen_curve:P-256',
        '-nodes',
        '-days',
        '2',
      ];
      execFileSync(
        'openssl',
        [
          ...made,
          '-subj',
          '/CN=localhost',
          '-addext',
          'subjectAltName=DNS:localhost',
          '-keyout',
          key,
          '-out',
          cert,
        ],
        { stdio: 'ignore' },
      );
    } catch {
      return skip('skipped: no openssl to make a certificate with');
    }
    const secure = { key: readFileSync(key, 'utf8'), cert: readFileSync(cert, 'utf8') };
    const web = await serve(pageHandle(join(folder, 'page')), [], { host: 'localhost', port: 0, secure });
    const text = await new Promise<string>((resolve, reject) => {
      const asked = request({ host: 'localhost', port: web.port, ca: secure.cert, path: '/' }, (answer) => {
        let said = '';
        answer.on('data', (piece) => (said += piece));
        answer.on('end', () => resolve(said));
      });
      asked.on('error', reject);
      asked.end();
    });
    await web.close();
    expect(text).toBe('<title>invented</title>');
  });
});

describe.skipIf(HINDRANCE !== '')(`the board’s address${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`, () => {
  let scene: Scene;
  let web: Web;
  let at: string;
  beforeAll(async () => {
    scene = await openScene();
    web = await openWeb(scene.post, {
      folder: join(folder, 'page'),
      host: 'localhost',
      port: 0,
      clock: Date.now,
    });
    at = `http://localhost:${web.port}`;
  });
  afterAll(async () => {
    await web?.close();
    await scene?.end();
  });
  const bearer = (token: string) => ({ authorization: `Bearer ${token}` });
  const ask = (path: string, token: string, body: unknown) =>
    fetch(`${at}${path}`, { method: 'POST', headers: bearer(token), body: JSON.stringify(body) });

  it('gives nothing of a patient without its token', async () => {
    for (const path of ['/board/feed', '/board/record/rec-1', '/crew/issue', '/board/question'])
      for (const headers of [{}, bearer('x'.repeat(24)), bearer('')]) {
        const answer = await fetch(`${at}${path}`, { headers });
        expect([path, answer.status]).toEqual([path, 401]);
        await answer.text();
      }
  });

  it('lets a board ask, and neither let phones in nor put them out', async () => {
    const { boardToken, crewToken } = scene.post.incident;
    const code = await scene.post.issue('Ada');
    const phone = await openPhone(scene.post, code);
    phone.log();
    await phone.until(allAtPost);
    expect((await ask('/board/question', boardToken, { record: 'rec-none', text: 'Any pain?' })).status).toBe(
      400,
    );
    expect(
      (await ask('/board/question', boardToken, { record: phone.facts.id, text: 'Any pain?' })).status,
    ).toBe(200);
    expect((await ask('/crew/out', boardToken, { device: code.device })).status).toBe(403);
    expect((await ask('/crew/issue', boardToken, { name: 'Mallory' })).status).toBe(403);
    expect(scene.post.devices.all().map(({ name, outAt }) => [name, outAt])).toEqual([['Ada', null]]);
    const state = await phone.until(({ word }) => (word?.questions.length ?? 0) > 0);
    expect(state.word?.questions).toMatchObject([{ record: phone.facts.id, text: 'Any pain?' }]);
    // The question outlives the post.
    await web.close();
    await scene.again();
    web = await openWeb(scene.post, {
      folder: join(folder, 'page'),
      host: 'localhost',
      port: 0,
      clock: Date.now,
    });
    at = `http://localhost:${web.port}`;
    expect(scene.post.desk.questions()).toMatchObject([{ text: 'Any pain?' }]);
    const answer = await fetch(`${at}/board/feed`, { headers: bearer(crewToken) });
    const reader = answer.body?.getReader();
    const first = JSON.parse(new TextDecoder().decode((await reader?.read())?.value)) as FeedLine;
    await reader?.cancel();
    expect(first.line === 'board' ? first.rows : []).toMatchObject([
      {
        record: phone.facts.id,
        rank: 3,
        writer: 'Ada',
        questions: [{ text: 'Any pain?', there: false, answer: null }],
      },
    ]);
    await phone.end();
  });

  it('carries no WebSocket of another origin’s page', async () => {
    const upgrade = {
      connection: 'Upgrade',
      upgrade: 'websocket',
      'sec-websocket-version': '13',
      'sec-websocket-key': 'dGhlIHNhbXBsZSBub25jZQ==',
    };
    const { request: plain } = await import('node:http');
    const status = (origin: string, path = '/link') =>
      new Promise<number>((resolve, reject) => {
        const asked = plain(`${at}${path}`, { headers: { ...upgrade, origin } });
        asked.on('upgrade', (answer, socket) => {
          socket.destroy();
          resolve(answer.statusCode ?? 0);
        });
        asked.on('response', (answer) => resolve(answer.statusCode ?? 0));
        asked.on('error', reject);
        asked.end();
      });
    expect(await status(at)).toBe(101);
    expect(await status('https://elsewhere.invalid')).toBe(403);
    expect(await status('null')).toBe(403);
    expect(await status(at, '/other')).toBe(404);
  });
});
