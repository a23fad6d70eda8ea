import type { NoticeTexts } from '../notice-texts.ts';

export const inputTexts = {
  'file-missing': { says: 'The file {file} is not there.', remedy: 'Put it into the job folder, or correct its name.' },
  'file-empty': { says: 'The file {file} is empty.', remedy: 'Enter at least the headings and one row.' },
  'file-too-large': { says: 'The file {file} is larger than {limit}.', remedy: 'Split the job into several folders.' },
  'file-not-text': { says: 'The file {file} is not a text file.', remedy: 'Save it from the spreadsheet as CSV (UTF-8).' },
  'encoding-assumed': {
    says: 'The file {file} is not UTF-8; it was read as {encoding}.',
    remedy: 'Check names with accents and umlauts, or save the file as UTF-8.',
  },
  'path-leaves-folder': {
    says: 'The path {path} leads out of the job folder.',
    remedy: 'Put the file into the job folder and name it from there.',
  },
  'csv-broken': {
    says: 'The table cannot be read on from here: {problem}.',
    remedy: 'Look for an open quotation mark or a stray separator in this row.',
  },
  'heading-row-missing': {
    says: 'No row of headings was recognised.',
    remedy: 'The first row must name the columns, among them: {wanted}.',
  },
  'column-missing': {
    says: 'The column “{wanted}” is missing.',
    remedy: 'Add it, with one of the headings that “clampwright init” shows.',
  },
  'column-twice': { says: 'The heading “{heading}” means {meaning}, which another column means too.', remedy: 'Keep one of the two.' },
  'column-ignored': { says: 'The column “{heading}” was not understood and is not used.', remedy: 'Rename it if it matters.' },
  'unit-unknown': {
    says: 'The unit “{unit}” is not one of {wanted}.',
    remedy: 'Write the unit in the heading in brackets, or behind the number.',
  },
  'unit-missing': { says: 'The number has no unit.', remedy: 'Write one of {wanted} in the heading in brackets, or behind the number.' },
  'cell-empty': { says: 'This cell is empty.', remedy: 'Enter {wanted}.' },
  'cell-formula': { says: 'The cell holds a formula, not a value.', remedy: 'Paste the value in its place; formulas are never run.' },
  'number-wanted': { says: 'This is not a number.', remedy: 'Enter {wanted}.' },
  'number-ambiguous': {
    says: '“{read}” may be read as a decimal or with a thousands separator.',
    remedy: 'Write it without a thousands separator.',
  },
  'number-absurd': { says: 'The number is not plausible.', remedy: 'Enter {wanted} above zero and up to {largest}; check the unit.' },
  'word-unknown': { says: 'This word is not known here.', remedy: 'Enter one of: {wanted}.' },
  'positions-unreadable': { says: 'The bolts cannot be read.', remedy: 'Write a number (8), or positions (1-4, 7, 9-12).' },
  'layout-unreadable': { says: 'The layout cannot be read.', remedy: 'Write “ring”, or rows × columns (2x4).' },
  'layout-contradicts-bolts': { says: 'The layout {layout} does not have {bolts} bolts.', remedy: 'Correct one of the two.' },
  'joint-contradicts-itself': {
    says: 'Joint {tag} is described twice: {field} is “{first}” in one row and “{second}” in another.',
    remedy: 'Rows of one joint may differ only in what belongs to a subgroup: positions, size, grade, length, lot.',
  },
  'flange-contradicts': {
    says: '{flange} has {field} {table}; the list says {given}.',
    remedy: 'Correct the list, or leave the cell empty and let the standard’s table fill it.',
  },
  'flange-unreadable': { says: 'The flange cannot be read.', remedy: 'Write “B16.5 NPS 8 Class 300” or “EN 1092-1 DN80 PN16”.' },
  'friction-half-given': { says: 'Friction is only half given.', remedy: 'Enter {wanted}.' },
  'friction-implausible': {
    says: 'No fastener has a {what} like this; {low} to {high} occur.',
    remedy: 'Check the figure against the certificate, and whether it stands in the right column.',
  },
  'yaml-broken': {
    says: 'The file cannot be read: {problem}.',
    remedy: 'Compare the line with the example that “clampwright init” writes.',
  },
  'yaml-unknown-key': { says: 'The word “{key}” is not known here.', remedy: 'Compare with the example that “clampwright init” writes.' },
  'yaml-wrong-value': { says: 'This value cannot be used.', remedy: 'Wanted: {wanted}.' },
  'date-unreadable': { says: 'This is not a date of the calendar.', remedy: 'Write year-month-day: 2026-11-25.' },
  'serial-twice': { says: 'The serial number {serial} is listed twice.', remedy: 'A tool appears once; swap its chart, not the tool.' },
  'lot-twice': { says: 'The lot {lot} is listed twice.', remedy: 'Give each lot its own name.' },
  'members-joint-unknown': {
    says: 'members.yaml speaks of joint {joint}, which the joint list does not have or which was left out.',
    remedy: 'Write the tag as in the joint list.',
  },
  'members-twice': { says: 'Two entries say what joint {joint} clamps.', remedy: 'Leave one of them.' },
  'members-no-flange': {
    says: 'Joint {joint} is not a standard flange with a gasket, and its dimensions are not given.',
    remedy: 'Name the flange in the joint list and the gasket here, or give ring, plates or matrix.',
  },
  'row-broken': {
    says: 'The row has {cells} cells; the headings have {wanted}.',
    remedy: 'Look for a missing or extra separator, or a comma inside a number.',
  },
} satisfies NoticeTexts<'input'>;
