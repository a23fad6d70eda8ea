import { OFFICE_SCREENS } from './office/screens.ts';
import { walkOffice } from './office/walk.ts';
import { shots } from './shots.ts';

const SIZES = { laptop: { width: 1440, height: 900 }, tablet: { width: 820, height: 1180 }, phone: { width: 360, height: 740 } } as const;

/** Pictures of the screens of planner, tool store and client, on an invented yard; `wanted`: only those whose name has this in it. */
export async function officePictures(wanted = ''): Promise<void> {
  for (const [size, viewport] of Object.entries(SIZES))
    await walkOffice(OFFICE_SCREENS, { language: 'en', viewport }, async ({ page }, name) => {
      const picture = `office-${name}-${size}`;
      if (picture.includes(wanted)) await shots(page, picture);
    });
}
