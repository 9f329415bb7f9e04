// What an incident is at its post: its name, its key and the post's own credentials, in a file for the owner's eyes only.

import { nkeys } from '@nats-io/nats-core';
import { base64url, fromBase64url, NAME, random } from '../link/index.ts';
import { readJson, writeJson } from './json-file.ts';

export interface Incident {
  readonly id: string;
  /** 32 bytes, base64url */
  readonly key: string;
  readonly post: { readonly nkey: string; readonly seed: string };
  /** opens the board */
  readonly boardToken: string;
  /** issues codes and puts devices out */
  readonly crewToken: string;
  /** what a vehicle's server shows */
  readonly vehiclePassword: string;
}

const isIncident = (one: unknown): one is Incident => {
  const { id, key, post, boardToken, crewToken, vehiclePassword } = (one ?? {}) as Partial<Incident>;
  return (
    typeof id === 'string' &&
    NAME.test(id) &&
    fromBase64url(key ?? '')?.length === 32 &&
    typeof post?.seed === 'string' &&
    typeof post.nkey === 'string' &&
    [boardToken, crewToken, vehiclePassword].every(
      (secret) => typeof secret === 'string' && secret.length >= 20,
    )
  );
};

/** The incident of this folder, begun where there is none. Rejects where the file is there and is no incident. */
export async function openIncident(path: string, newName: () => string): Promise<Incident> {
  const kept = await readJson(path);
  if (isIncident(kept)) return kept;
  if (kept !== null)
    throw new Error(`${path} is no incident: it was altered. Put a copy back, or take another folder.`);
  const pair = nkeys.createUser();
  const made: Incident = {
    id: newName(),
    key: base64url(random(32)),
    post: { nkey: pair.getPublicKey(), seed: new TextDecoder().decode(pair.getSeed()) },
    boardToken: base64url(random(18)),
    crewToken: base64url(random(18)),
    vehiclePassword: base64url(random(18)),
  };
  await writeJson(path, made);
  return made;
}
