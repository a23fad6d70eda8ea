import { useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { jointOfCode } from '../job/joint-of-code.ts';
import { useSay } from '../language/speech.tsx';
import { Banner, LinkButton, Page, Soft } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';
import css from './scan.module.css';

interface SquareReader {
  detect(source: CanvasImageSource): Promise<readonly { readonly rawValue: string }[]>;
}
declare const BarcodeDetector: (new (options: { formats: string[] }) => SquareReader) | undefined;

/** Reads a joint's tag with the camera; typing is the fallback. */
export function ScanScreen() {
  const say = useSay();
  const { book } = useJob();
  const [, go] = useLocation();
  const video = useRef<HTMLVideoElement>(null);
  const [state, setState] = useState<'looking' | 'refused' | 'none' | 'wrong'>('looking');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the camera is opened once
  useEffect(() => {
    let going = true;
    let stream: MediaStream | undefined;
    const look = async () => {
      if (!navigator.mediaDevices?.getUserMedia) return setState('none');
      try {
        stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      } catch (error) {
        return setState((error as DOMException).name === 'NotAllowedError' ? 'refused' : 'none');
      }
      if (!going || !video.current) return undefined;
      video.current.srcObject = stream;
      await video.current.play();
      const read = await squareReader();
      while (going && video.current) {
        const joint = (await read(video.current)).map((text) => jointOfCode(book, text)).find((one) => one !== undefined);
        if (joint === 'another') setState('wrong');
        else if (joint !== undefined) return go(`/joint/${joint}`);
        await new Promise((resolve) => setTimeout(resolve, 200));
      }
      return undefined;
    };
    void look();
    return () => {
      going = false;
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, []);
  return (
    <Page title={say('scan.title')} back="/">
      {state === 'refused' || state === 'none' ? (
        <Banner level="mind">{say(`scan.${state}`)}</Banner>
      ) : (
        <>
          <Soft>{say('scan.text')}</Soft>
          <video ref={video} className={css.camera} muted playsInline />
        </>
      )}
      {state === 'wrong' ? <Banner level="stop">{say('scan.wrong')}</Banner> : null}
      <LinkButton href="/">{say('today.find')}</LinkButton>
    </Page>
  );
}

/** The browser's own reader where it has one, else the library. */
async function squareReader(): Promise<(video: HTMLVideoElement) => Promise<readonly string[]>> {
  if (typeof BarcodeDetector !== 'undefined') {
    const detector = new BarcodeDetector({ formats: ['qr_code'] });
    return async (video) => (await detector.detect(video)).map(({ rawValue }) => rawValue);
  }
  const { default: jsQR } = await import('jsqr');
  const canvas = document.createElement('canvas');
  return async (video) => {
    const [width, height] = [video.videoWidth, video.videoHeight];
    if (width === 0) return [];
    Object.assign(canvas, { width, height });
    const picture = canvas.getContext('2d', { willReadFrequently: true })!;
    picture.drawImage(video, 0, 0);
    const found = jsQR(picture.getImageData(0, 0, width, height).data, width, height);
    return found ? [found.data] : [];
  };
}
