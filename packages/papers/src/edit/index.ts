/** Files of a job as people edit them: what is not touched keeps every byte. */

export { JOINT_FIELDS, type JointColumn } from '../read/tables/joint-list.ts';
export { type CsvText, csvBytes, csvText, withCells, withoutRecords, withRecords } from './csv-text.ts';
export { unzipFolder, withoutFolder, zipFolder } from './folder-zip.ts';
export { changeYaml, type YamlChange, yamlOf } from './yaml-text.ts';
