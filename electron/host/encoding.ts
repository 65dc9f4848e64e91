import { detect } from 'chardet';

/**
 * The likeliest encoding of bytes that are no UTF, as a label of TextDecoder, by the frequency of
 * their characters; null where nothing fits.
 */
export const guessEncoding = (bytes: Uint8Array): string | null => detect(bytes);
