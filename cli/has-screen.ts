/** Whether this machine shows windows to the person at it. */
export const hasScreen = ({ platform, env }: Pick<NodeJS.Process, 'platform' | 'env'>): boolean =>
  platform === 'win32' ||
  platform === 'darwin' ||
  [env['DISPLAY'], env['WAYLAND_DISPLAY']].some(
    (display) => display !== undefined && display !== '',
  );
