import type { NoticeTexts } from '../notice-texts.ts';

export const modelTexts = {
  'model-broken': {
    says: 'The model cannot be read: the file is damaged or incomplete.',
    remedy: 'Export it once more from the modelling program.',
  },
  'model-text': {
    says: 'The text of the model is damaged here: {problem}.',
    remedy: 'Export it once more; if it came by mail, ask for it packed.',
  },
  'model-not-step': {
    says: 'This is not an IFC file in STEP text.',
    remedy: 'Export IFC (ending .ifc), not IFC-XML or a picture of the model.',
  },
  'model-packed': { says: 'The model is packed.', remedy: 'Unpack it: the IFC file is inside.' },
  'model-schema': { says: 'The schema {schema} is not read.', remedy: 'Export as IFC 2x3, IFC 4 or IFC 4.3.' },
  'model-unit-missing': { says: 'The model does not say its unit of length; metres were assumed.', remedy: 'Check a size that you know.' },
  'model-without-bolts': {
    says: 'The model holds no bolt that could be understood.',
    remedy: 'Export with bolts as mechanical fasteners (IfcMechanicalFastener); many programs leave them out unless asked.',
  },
  'fastener-unreadable': { says: 'This fastener cannot be read.', remedy: 'Look at it in the model.' },
  'fastener-no-bolt': { says: 'This is no bolt but {kind}, and is left out.', remedy: 'Nothing, if that is so.' },
  'fastener-without-place': {
    says: 'Where this fastener is cannot be told: its placement is missing, goes in a circle or hangs on a grid.',
    remedy: 'Export with local placements, or enter the joint by hand.',
  },
  'fastener-without-size': {
    says: 'No size of bolt was found here; read, and no size, were: {tried}.',
    remedy: 'Fill in the size in the list that is written, or give the fastener its nominal diameter in the model.',
  },
  'fastener-without-grade': { says: 'No grade was found for bolts of “{tag}”.', remedy: 'Fill in the grade in the list that is written.' },
  'fastener-contradicts': {
    says: 'The model says two things of this fastener’s {what}: {first}, and {second}. Neither was taken.',
    remedy: 'Ask the modeller, and fill it in in the list that is written.',
  },
  'fastener-count': {
    says: 'The model says {said} bolts here, and shows {found}.',
    remedy: 'Check against the drawing; places that are not shown are not in the list.',
  },
  'joint-not-flat': { says: 'The bolts of “{tag}” stand up to {off} mm out of one plane.', remedy: 'Check whether they are one joint.' },
  'bolts-on-one-spot': {
    says: 'In “{tag}” {bolts, plural, one {a bolt stands} other {# bolts stand}} where another one is.',
    remedy: 'The model may hold them twice: check before the list is used.',
  },
  'joint-by-distance': {
    says: 'Nothing in the model holds the {bolts, plural, one {bolt} other {# bolts}} of “{tag}” together; they were grouped by distance.',
    remedy: 'Check the joint against the drawing, and give it its tag.',
  },
  'grip-open': { says: 'The clamped thickness of “{tag}” is open: {why}.', remedy: 'Fill it in in the list that is written.' },
} satisfies NoticeTexts<'model'>;
