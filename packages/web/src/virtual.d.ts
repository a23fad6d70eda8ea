declare module 'virtual:practice-plan' {
  const plan: import('@clampwright/core').Plan;
  export default plan;
}
declare module 'virtual:demo-folder' {
  /** bytes in base64, by file name */
  const files: Readonly<Record<string, string>>;
  export default files;
}
