/** Names the paired device to the screens. The server writes it; from a client it is never believed. */
export const DEVICE_HEADER = "x-wadding-device";
