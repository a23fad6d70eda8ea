/** Civil date on this device, as entries carry it. */
export const today = (now = new Date()): string =>
  [now.getFullYear(), String(now.getMonth() + 1).padStart(2, '0'), String(now.getDate()).padStart(2, '0')].join('-');
