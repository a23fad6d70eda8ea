import type { NoticeTexts } from '../notice-texts.ts';

export const inputTexts = {
  'file-missing': { says: 'The file {file} is not there.', remedy: 'Put it into the job folder, or correct its name.' },
  'file-empty': { says: 'The file {file} is empty.', remedy: 'Enter at least the headings and one row.' },
  'file-too-large': { says: 'The file {file} is larger than {limit}.', remedy: 'Split the job into several folders.' },
  'file-not-text': { says: 'The file {file} is not a text file.', remedy: 'Save it from the spreadsheet as XLSX or CSV (UTF-8).' },
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
    remedy: 'One of the first rows must name the columns, among them: {wanted}.',
  },
  'column-missing': {
    says: 'The column “{wanted}” is missing.',
    remedy: 'Add it, with one of the headings of docs/columns.md.',
  },
  'column-twice': {
    says: 'The heading “{heading}” means {meaning}, and so does “{other}”.',
    remedy: 'Keep one of the two, or say which one it is, at its heading in the app or by --map "{heading}={meaning}".',
  },
  'column-unclear': {
    says: 'The heading “{heading}” may mean: {candidates}.',
    remedy:
      'Say once what it means, at its heading in the app or by --map "{heading}={example}", or --map "{heading}=ignore". It is remembered in mapping.yaml.',
  },
  'column-asked': {
    says: 'No heading means {wanted}; not understood were {candidates}.',
    remedy: 'If it is one of these, say so once, at its heading in the app or by --map "{example}={wanted}". Else add the column.',
  },
  'heading-map-unused': {
    says: '--map "{heading}={means}" fits no table of this job.',
    remedy: 'Write the heading as it stands in the file, and a meaning of docs/columns.md.',
  },
  'workbook-broken': { says: 'The workbook cannot be read: {problem}.', remedy: 'Open it in the spreadsheet program and save it as XLSX.' },
  'workbook-unsafe': {
    says: 'The workbook is refused: {problem}.',
    remedy: 'A list of joints needs nothing like this. Ask where the file comes from; copy the values into a new workbook.',
  },
  'workbook-old': {
    says: 'The workbook is locked with a password, or of the old kind (XLS).',
    remedy: 'Save it as XLSX without a password, or as CSV.',
  },
  'sheet-missing': { says: 'The workbook has no sheet “{sheet}”; it has {sheets}.', remedy: 'Correct the name behind the #.' },
  'sheet-unclear': {
    says: 'Several sheets may be the {wanted}: {sheets}.',
    remedy: 'Name the one that counts, behind a #: {example}',
  },
  'rows-hidden': {
    says: '{rows, plural, one {One hidden row was} other {# hidden rows were}} read as well.',
    remedy: 'Delete what no longer counts: hiding does not take a row out of the list.',
  },
  'cell-error': { says: 'The cell shows an error, not a value.', remedy: 'Mend the formula in the spreadsheet, or enter the value.' },
  'bolt-list-uneven': {
    says: 'The rows of joint {tag} do not give every bolt its own number and place; look at {bolts}.',
    remedy: 'Number the bolts from 1 without gaps, one row each, all with x and y or none.',
  },
  'column-ignored': { says: 'The column “{heading}” was not understood and is not used.', remedy: 'Rename it if it matters.' },
  'unit-unknown': {
    says: 'The unit “{unit}” is not one of {wanted}.',
    remedy: 'Write the unit in the heading in brackets, or behind the number.',
  },
  'unit-missing': { says: 'The number has no unit.', remedy: 'Write one of {wanted} in the heading in brackets, or behind the number.' },
  'cell-empty': { says: 'This cell is empty.', remedy: 'Enter {wanted}.' },
  'cell-formula': {
    says: 'The cell holds a formula, not a value.',
    remedy: 'Paste the value in its place, or work the sheet out and save it; formulas are never run here.',
  },
  'number-wanted': { says: 'This is not a number.', remedy: 'Enter {wanted}.' },
  'quantity-wanted': { says: 'This is not a number.', remedy: 'Enter a number in {units}.' },
  'number-outside': { says: 'This number cannot be used.', remedy: 'Enter a number from {low} to {high}.' },
  'whole-number-outside': { says: 'This number cannot be used.', remedy: 'Enter a whole number from {low} to {high}.' },
  'number-ambiguous': {
    says: '“{read}” may be read as a decimal or with a thousands separator.',
    remedy: 'Write it without a thousands separator; in a workbook enter it as a number, not as text.',
  },
  'number-absurd': { says: 'The number is not plausible.', remedy: 'Enter {wanted} above zero and up to {largest}; check the unit.' },
  'label-too-long': {
    says: 'This name is longer than {most} characters, or has more than one line.',
    remedy: 'Shorten it: the log keeps tags, serial and lot numbers as labels of up to {most} characters.',
  },
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
  'certificates-unclear': {
    says: 'Tool {serial} has two certificates of {day}: {first} and {second}. Neither was chosen.',
    remedy: 'Keep the one that holds, or correct the date of the other.',
  },
  'certificate-missing': {
    says: 'Tool {serial} has no certificate with a chart.',
    remedy: 'Give certificate and chart here, or list them in the file of certificates.',
  },
  'certificate-of-no-tool': {
    says: 'The list has a certificate of {serial}, which is no tool of this job.',
    remedy: 'Nothing, if the tool is not used here; else compare the serial numbers.',
  },
  'record-joint-unknown': { says: 'No card was issued for a joint “{tag}” in this job.', remedy: 'Joints with cards: {joints}.' },
  'record-step-unknown': { says: 'The joint has no step “{step}”.', remedy: 'Its steps: {steps}.' },
  'record-bolt-unknown': { says: 'The joint has no bolt {bolt}.', remedy: 'Its bolts are 1 to {bolts}.' },
  'records-known': {
    says: 'The file {name} was entered into this book before, byte for byte.',
    remedy: 'Enter only what is new, as a file of its own.',
  },
  'entered-lot-unknown': {
    says: 'Lot {lot} is not registered in this book, and the file does not say what its fasteners are.',
    remedy: 'Write size, grade and system behind “designation”, beside the lot.',
  },
  'entered-tool-unknown': {
    says: 'Tool {tool} is registered neither in this book nor in that of the yard.',
    remedy: 'Compare the serial number, or register the tool first: clampwright register.',
  },
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
