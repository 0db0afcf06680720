import { useStore } from 'zustand';
import type { SignerBox, SignerState } from './signerBox.ts';

/** The reviewer's key of this browser, as it is now. */
export const useSigner = (box: SignerBox): SignerState => useStore(box.state);
