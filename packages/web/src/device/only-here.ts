/** Only one page at a time writes for this device: two would tell two things at one place of its chain. Released when the page closes. */
export function onlyHere(world: string, lost: () => void): Promise<'ours' | 'elsewhere'> {
  return new Promise((resolve) => {
    void navigator.locks
      .request(`clampwright ${world}`, { ifAvailable: true }, (lock) => {
        if (!lock) {
          resolve('elsewhere');
          return undefined;
        }
        resolve('ours');
        return new Promise<void>(() => {});
      })
      .catch(lost);
  });
}

/** Takes the device over from another page, which says so and stops. */
export function takeOver(world: string, lost: () => void): Promise<void> {
  return new Promise((resolve) => {
    void navigator.locks
      .request(`clampwright ${world}`, { steal: true }, () => {
        resolve();
        return new Promise<void>(() => {});
      })
      .catch(lost);
  });
}
