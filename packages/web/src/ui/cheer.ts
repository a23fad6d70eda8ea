import type { Settings } from './settings.ts';

/** Tells hand, ear or both that a bolt is on disk. */
export function cheer({ vibration, sound, speech, language }: Settings, words: string): void {
  if (vibration) navigator.vibrate?.(60);
  if (sound) beep();
  if (speech && 'speechSynthesis' in window) {
    const said = new SpeechSynthesisUtterance(words);
    said.lang = language;
    speechSynthesis.speak(said);
  }
}

let audio: AudioContext | undefined;
function beep(): void {
  audio ??= new AudioContext();
  const tone = audio.createOscillator();
  const gain = audio.createGain();
  gain.gain.value = 0.2;
  tone.frequency.value = 880;
  tone.connect(gain).connect(audio.destination);
  tone.start();
  tone.stop(audio.currentTime + 0.12);
}
