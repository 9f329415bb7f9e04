// The SHA-256 of some bytes, in hexadecimal.

/** By the browser's own cryptography, which is there on pages that came over a safe connection. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
