import type { Scene } from '../drawing/scene.ts';
import { toSvg } from '../drawing/svg.ts';

/** A drawing in a page; every text in it was escaped by the back end. */
export function SceneView({ scene, millimetres = false }: { readonly scene: Scene; readonly millimetres?: boolean }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the SVG back end escapes what it writes
  return <div className="drawing" dangerouslySetInnerHTML={{ __html: toSvg(scene, { millimetres }) }} />;
}
