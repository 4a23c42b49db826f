// The outside of a backup file: a line that names the format, a line that describes the rest, then the packed content,
// encrypted when there is a passphrase.
//
//   AFTERBELL BACKUP
//   {"version":1,"bytes":4711,"sha256":"…","encryption":null | {"salt":"…","iv":"…","tag":"…"}}
//   gzip of one JSON document, or AES-256-GCM of that
//
// The hash covers the bytes as stored, so that damage and a wrong passphrase can be told apart.
import { createCipheriv, createDecipheriv, createHash, randomBytes, scrypt } from 'node:crypto';
import { promisify } from 'node:util';
import { gunzip, gzip } from 'node:zlib';
import { type Result, refuse, succeed } from './result.js';

const FIRST_LINE = 'AFTERBELL BACKUP\n';
const BACKUP_VERSION = 1;
/** A description line is about 250 bytes. */
const DESCRIPTION_BYTES = 4096;
const CONTENT_BYTES = 1024 ** 3;
const CIPHER = 'aes-256-gcm';
/** 128 MB and about a third of a second to try one passphrase; the values that OWASP's password storage sheet names first for scrypt (from memory). */
const SCRYPT = { N: 2 ** 17, r: 8, p: 1, maxmem: 160 * 1024 ** 2 };
const PASSPHRASE_LENGTH = 8;

interface Description {
  readonly version: number;
  readonly bytes: number;
  readonly sha256: string;
  readonly encryption: { readonly salt: string; readonly iv: string; readonly tag: string } | null;
}

const pack = promisify(gzip);
const unpack = promisify(gunzip);

function keyFrom(passphrase: string, salt: Uint8Array): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    // One passphrase, however the keyboard composes its accents.
    scrypt(passphrase.normalize('NFC'), salt, 32, SCRYPT, (error, key) =>
      error ? reject(error) : resolve(key),
    );
  });
}

function corrupt(what: string): Result<never> {
  return refuse(
    'backup.corrupt',
    `This backup cannot be used: ${what}.`,
    'Copy the file again from where it was kept, or use an earlier backup.',
  );
}

/** The bytes of a backup file with the content in it. */
export async function seal(content: string, passphrase: string | null): Promise<Result<Uint8Array>> {
  if (passphrase !== null && passphrase.length < PASSPHRASE_LENGTH) {
    return refuse(
      'input.invalid',
      'The passphrase is too short to protect anything.',
      `Use at least ${PASSPHRASE_LENGTH} characters; four random words are good.`,
    );
  }
  let payload: Buffer = await pack(content, { level: 9 });
  let encryption: Description['encryption'] = null;
  if (passphrase !== null) {
    const salt = randomBytes(16);
    const iv = randomBytes(12);
    const cipher = createCipheriv(CIPHER, await keyFrom(passphrase, salt), iv);
    payload = Buffer.concat([cipher.update(payload), cipher.final()]);
    encryption = {
      salt: salt.toString('hex'),
      iv: iv.toString('hex'),
      tag: cipher.getAuthTag().toString('hex'),
    };
  }
  const description: Description = {
    version: BACKUP_VERSION,
    bytes: payload.length,
    sha256: createHash('sha256').update(payload).digest('hex'),
    encryption,
  };
  return succeed(Buffer.concat([Buffer.from(`${FIRST_LINE}${JSON.stringify(description)}\n`), payload]));
}

function isHex(value: unknown, bytes: number): boolean {
  return typeof value === 'string' && new RegExp(`^[0-9a-f]{${2 * bytes}}$`).test(value);
}

function readDescription(line: string): Description | null {
  let value: Partial<Description> | null;
  try {
    value = JSON.parse(line) as Partial<Description> | null;
  } catch {
    return null;
  }
  const encryption = value?.encryption;
  const isPlain = encryption === null;
  const isSealed = isHex(encryption?.salt, 16) && isHex(encryption?.iv, 12) && isHex(encryption?.tag, 16);
  if (!Number.isSafeInteger(value?.bytes) || !isHex(value?.sha256, 32) || !(isPlain || isSealed)) return null;
  return value as Description;
}

/** The content of a backup file; every way in which it can be unusable has its own sentence. */
export async function unseal(file: Uint8Array, passphrase: string | null): Promise<Result<string>> {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.byteLength);
  if (bytes.length === 0) return corrupt('the file is empty');
  const start = bytes.subarray(0, FIRST_LINE.length).toString('latin1');
  if (start !== FIRST_LINE) {
    if (FIRST_LINE.startsWith(start)) return corrupt('the file has been cut short');
    return refuse(
      'backup.foreign',
      'This file is not an Afterbell backup.',
      'Choose a file that “backup” has written.',
    );
  }
  const end = bytes.subarray(0, FIRST_LINE.length + DESCRIPTION_BYTES).indexOf('\n', FIRST_LINE.length);
  if (end < 0)
    return corrupt(
      bytes.length < DESCRIPTION_BYTES ? 'the file has been cut short' : 'its beginning is damaged',
    );
  const line = bytes.subarray(FIRST_LINE.length, end).toString('utf8');
  const version = Number(/^\{"version":(\d{1,6}),/.exec(line)?.[1] ?? Number.NaN);
  if (version > BACKUP_VERSION) {
    return refuse(
      'backup.newer',
      'This backup was written by a newer Afterbell than this one.',
      'Install the newest Afterbell, then restore it.',
    );
  }
  const description = readDescription(line);
  if (!description || version !== BACKUP_VERSION) return corrupt('its beginning is damaged');
  let payload = bytes.subarray(end + 1);
  if (payload.length < description.bytes) return corrupt('the file has been cut short');
  if (payload.length > description.bytes) return corrupt('there is something after its end');
  if (createHash('sha256').update(payload).digest('hex') !== description.sha256)
    return corrupt('the file is damaged');
  if (description.encryption) {
    if (passphrase === null || passphrase === '') {
      return refuse(
        'backup.passphrase-missing',
        'This backup is locked with a passphrase.',
        'Give the passphrase that was used when it was made.',
      );
    }
    const { salt, iv, tag } = description.encryption;
    const decipher = createDecipheriv(
      CIPHER,
      await keyFrom(passphrase, Buffer.from(salt, 'hex')),
      Buffer.from(iv, 'hex'),
    );
    decipher.setAuthTag(Buffer.from(tag, 'hex'));
    try {
      payload = Buffer.concat([decipher.update(payload), decipher.final()]);
    } catch {
      return refuse(
        'backup.passphrase-wrong',
        'The passphrase does not open this backup.',
        'Try again; mind capitals and blanks. Without the passphrase nobody can open it.',
      );
    }
  }
  try {
    return succeed(
      new TextDecoder('utf-8', { fatal: true }).decode(
        await unpack(payload, { maxOutputLength: CONTENT_BYTES }),
      ),
    );
  } catch {
    return corrupt('its content cannot be unpacked');
  }
}
