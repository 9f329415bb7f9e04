// Writes the messaging server's configuration for the user: the templates in config/link with this machine's own values.

import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { mayHear, mayPublish } from '../../link/index.ts';
import type { Device } from '../devices.ts';

export type Template = 'post' | 'cluster' | 'vehicle';

const TEMPLATES = fileURLToPath(new URL('../../../config/link/', import.meta.url));

/** The template with each `@name@` filled in. Throws where one is left over: that is a fault of ours. */
export async function serverConfig(
  template: Template,
  values: Readonly<Record<string, string>>,
): Promise<string> {
  const text = await readFile(`${TEMPLATES}${template}.conf`, 'utf8');
  const filled = text.replace(/@(\w+)@/g, (mark, name: string) => values[name] ?? mark);
  const left = filled.split('\n').find((line) => !line.trimStart().startsWith('#') && /@\w+@/.test(line));
  if (left !== undefined) throw new Error(`${template}.conf is not filled in: ${left.trim()}`);
  return filled;
}

const list = (subjects: readonly string[]): string => `[ ${subjects.map((one) => `"${one}"`).join(', ')} ]`;

/** Where a device's answer to another goes is known only when it is asked; the server lets it answer that once. */
const deviceUser = (incident: string, { device, name, nkey }: Device): string =>
  `      # ${name.replace(/[^\p{L}\p{N} .-]/gu, '')}
      { nkey: ${nkey}, permissions: {
          publish: { allow: ${list(mayPublish(incident, device))} }
          subscribe: { allow: ${list(mayHear(incident, device))} }
          allow_responses: { max: 1, expires: "1m" } } }`;

/** The post reads and tells, and publishes no event of anybody. */
const postUser = (nkey: string): string =>
  `      { nkey: ${nkey}, permissions: { publish: { deny: [ "rec.>" ] }, subscribe: { allow: [ ">" ] } } }`;

/** Who may connect: the post, and each device that was not put out. No secret stands in it. */
export const usersConfig = (incident: string, post: string, devices: readonly Device[]): string =>
  `# Written by the post; it is written anew whenever a device joins or is put out.
accounts {
  LINK {
    jetstream: enabled
    users: [
${[postUser(post), ...devices.filter(({ outAt }) => outAt === null).map((one) => deviceUser(incident, one))].join('\n')}
    ]
  }
}
`;

/** Whose servers may join as a vehicle's. */
export const leafUsersConfig = (user: string, password: string): string =>
  `authorization { users: [ { user: "${user}", password: "${password}", account: LINK } ] }\n`;
