import { type Scene, toSvg } from '@clampwright/papers/screen';
import css from './scene-view.module.css';

/** A drawing of the papers, in the colours of the page. */
export const SceneView = ({ scene, most }: { readonly scene: Scene; readonly most?: string }) => (
  // biome-ignore lint/security/noDangerouslySetInnerHtml: written by the drawing, which escapes every text of it
  <div className={css.scene} style={most === undefined ? {} : { maxWidth: most }} dangerouslySetInnerHTML={{ __html: toSvg(scene) }} />
);
