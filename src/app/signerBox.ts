import { createStore, type StoreApi } from 'zustand/vanilla';
import { browserKeeper, type LocalKeeper } from '../storage/localKeeper.ts';
import { type KeyFile, readKeyFile } from '../domain/review/keyFile.ts';
import { makeKeyFile, openKeyFile, shortestPassphrase } from './keyFile.ts';
import type { Signer } from './verdictDesk.ts';

export interface SignerState {
  /** Kept in this browser, sealed; null while there is none. */
  readonly file: KeyFile | null;
  /** Unlocked until the page is left. */
  readonly signer: Signer | null;
}

type Told = { readonly ok: true } | { readonly ok: false; readonly says: string };

/** The reviewer's key of this browser. */
export interface SignerBox {
  readonly state: StoreApi<SignerState>;
  readonly current: () => Signer | null;
  readonly make: (passphrase: string) => Promise<Told>;
  readonly unlock: (passphrase: string) => Promise<Told>;
  readonly lock: () => void;
  /** Text of the file to keep elsewhere. */
  readonly exported: () => string;
  readonly bringIn: (text: string) => Told;
}

const keptAs = 'latchward.reviewerKey';
const tooShort = `A passphrase has at least ${shortestPassphrase} characters.`;
const noCrypto = 'This browser makes no keys on a page that is not served securely.';

export function createSignerBox(
  keeper: Pick<LocalKeeper, 'getItem' | 'setItem'> | undefined = browserKeeper(),
): SignerBox {
  const state = createStore<SignerState>()(() => ({ file: readKeyFile(read() ?? '') ?? null, signer: null }));
  function read(): string | null {
    try {
      return keeper?.getItem(keptAs) ?? null;
    } catch {
      return null;
    }
  }
  function keep(file: KeyFile): Told {
    state.setState({ file, signer: null });
    try {
      keeper?.setItem(keptAs, JSON.stringify(file));
      return { ok: true };
    } catch {
      return {
        ok: false,
        says: 'This browser keeps nothing, so the key is gone with this page. Export it now.',
      };
    }
  }
  return {
    state,
    current: () => state.getState().signer,
    make: async (passphrase) => {
      if (passphrase.length < shortestPassphrase) return { ok: false, says: tooShort };
      if (!globalThis.crypto?.subtle) return { ok: false, says: noCrypto };
      const file = await makeKeyFile(passphrase);
      const kept = keep(file);
      state.setState({ signer: (await openKeyFile(file, passphrase)) ?? null });
      return kept;
    },
    unlock: async (passphrase) => {
      const { file } = state.getState();
      if (!file) return { ok: false, says: 'There is no key in this browser yet.' };
      const signer = await openKeyFile(file, passphrase);
      if (!signer) return { ok: false, says: 'That passphrase does not open this key.' };
      state.setState({ signer });
      return { ok: true };
    },
    lock: () => state.setState({ signer: null }),
    exported: () => JSON.stringify(state.getState().file, null, 1),
    bringIn: (text) => {
      const file = readKeyFile(text);
      return file ? keep(file) : { ok: false, says: 'This is no key of a reviewer.' };
    },
  };
}
