// A passkey's secret by the PRF extension (Web Authentication Level 3, W3C), where browser and device have it.

import { lockedVault, type Shelf } from '../../record/store/index.ts';

export type PasskeyAnswer =
  | { readonly kind: 'secret'; readonly secret: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'none'; readonly why: string };

type Bytes = Uint8Array<ArrayBuffer>;
const none = (why: string): { readonly kind: 'none'; readonly why: string } => ({ kind: 'none', why });
const random = (length: number): Bytes => crypto.getRandomValues(new Uint8Array(length));

/** True where the browser offers an authenticator of the device itself; whether it knows PRF shows only when asked. */
export async function mayHavePasskey(): Promise<boolean> {
  try {
    return await PublicKeyCredential.isUserVerifyingPlatformAuthenticatorAvailable();
  } catch {
    return false;
  }
}

const secretOf = (credential: Credential | null): Bytes | null => {
  if (!(credential instanceof PublicKeyCredential)) return null;
  const first = credential.getClientExtensionResults().prf?.results?.first;
  if (first === undefined) return null;
  return new Uint8Array(first instanceof ArrayBuffer ? first : first.buffer.slice(0)) as Bytes;
};

async function evaluate(credential: Bytes, salt: Bytes): Promise<PasskeyAnswer> {
  try {
    const got = await navigator.credentials.get({
      publicKey: {
        challenge: random(32),
        allowCredentials: [{ type: 'public-key', id: credential }],
        userVerification: 'required',
        extensions: { prf: { eval: { first: salt } } },
      },
    });
    const secret = secretOf(got);
    return secret === null ? none('This passkey gives no secret for locking.') : { kind: 'secret', secret };
  } catch {
    return none('The passkey was not given. The passphrase works as before.');
  }
}

/** Asks for the secret of the passkey that the vault names. */
export async function askPasskey(shelf: Shelf): Promise<PasskeyAnswer> {
  const passkey = (await lockedVault(shelf))?.passkey ?? null;
  return passkey === null ? none('No passkey is set.') : evaluate(passkey.credential, passkey.salt);
}

export type PasskeyMade =
  | { readonly kind: 'made'; readonly credential: Bytes; readonly salt: Bytes; readonly secret: Bytes }
  | { readonly kind: 'none'; readonly why: string };

/** Makes a passkey on this device; the name in it is the program's, never a patient's. */
export async function makePasskey(): Promise<PasskeyMade> {
  const salt = random(32);
  try {
    const made = await navigator.credentials.create({
      publicKey: {
        challenge: random(32),
        rp: { name: 'Fieldsay' },
        user: { id: random(16), name: 'this device', displayName: 'Fieldsay on this device' },
        // COSE algorithms (RFC 9053): ES256 and RS256, which platform authenticators have.
        pubKeyCredParams: [
          { type: 'public-key', alg: -7 },
          { type: 'public-key', alg: -257 },
        ],
        authenticatorSelection: { authenticatorAttachment: 'platform', userVerification: 'required' },
        extensions: { prf: { eval: { first: salt } } },
      },
    });
    if (!(made instanceof PublicKeyCredential)) return none('No passkey was made.');
    if (made.getClientExtensionResults().prf?.enabled !== true)
      return none('This device’s passkeys cannot lock data (no PRF). The passphrase alone locks it.');
    const credential = new Uint8Array(made.rawId);
    const direct = secretOf(made);
    const answer: PasskeyAnswer =
      direct === null ? await evaluate(credential, salt) : { kind: 'secret', secret: direct };
    return answer.kind === 'secret' ? { kind: 'made', credential, salt, secret: answer.secret } : answer;
  } catch {
    return none('No passkey was made: the device has none, or it was broken off.');
  }
}
