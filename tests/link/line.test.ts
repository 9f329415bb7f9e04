// One suite for the line in memory, over TCP to the real server, and over WebSocket through the post's own address.

import { afterAll, beforeAll, describe } from 'vitest';
import { inboxOf, type JoinCode, mayHear, mayPublish } from '../../src/link/index.ts';
import { createStream } from '../../src/link/node/index.ts';
import { dialPost } from '../../src/link/page/index.ts';
import { ensureStream } from '../../src/post/server/stream.ts';
import { serve, type Web } from '../../src/post/web/serve.ts';
import { connected, HINDRANCE, lineOf, openScene, type Scene } from '../post/scene.ts';
import { type Ends, lineSuite } from './line-suite.ts';
import { createMemoryServer } from './memory-server.ts';

describe('the line in memory', () => {
  const server = createMemoryServer();
  const [incident, ada, ben] = ['invented', 'ada-1', 'ben-2'];
  const may = (device: string) => ({
    publish: mayPublish(incident, device),
    hear: mayHear(incident, device),
  });
  const ends: Ends = {
    incident,
    ada: { device: ada, line: server.line(may(ada)) },
    ben: { device: ben, line: server.line(may(ben)) },
    post: server.line(),
    stream: server.stream,
  };
  lineSuite(() => ends);
});

const WAYS = ['TCP', 'WebSocket'] as const;

describe.each(WAYS)('the line over %s', (way) => {
  const noSocket = way === 'WebSocket' && !('WebSocket' in globalThis);
  const why = HINDRANCE !== '' ? HINDRANCE : noSocket ? 'skipped: this Node has no WebSocket' : '';
  describe.skipIf(why !== '')(why === '' ? 'to the real server' : why, () => {
    let scene: Scene;
    let web: Web;
    let ends: Ends;
    const lineFor = async (code: JoinCode) => {
      const line =
        way === 'TCP'
          ? lineOf(scene.post, code)
          : dialPost(`http://localhost:${web.port}/`, { seed: code.seed, inbox: inboxOf(code.device) });
      await connected(line);
      return { device: code.device, line };
    };
    beforeAll(async () => {
      scene = await openScene();
      const { post } = scene;
      // The post itself would answer and take in; the suite plays its part.
      await post.desk.close();
      web = await serve(async () => undefined, post.webPorts, { host: 'localhost', port: 0 });
      const connection = post.line.connection();
      if (connection === null) throw new Error('not connected');
      const { name, made } = await ensureStream(connection, 1);
      ends = {
        incident: post.incident.id,
        ada: await lineFor(await post.issue('Ada')),
        ben: await lineFor(await post.issue('Ben')),
        post: post.line,
        stream: createStream(post.line.connection, name, made),
      };
    });
    afterAll(async () => {
      await ends?.ada.line.close();
      await web?.close();
      await scene?.end();
    });
    lineSuite(() => ends);
  });
});
