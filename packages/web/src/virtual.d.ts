declare module 'virtual:practice-job' {
  const demo: {
    readonly job: import('@clampwright/core').Job;
    readonly plan: import('@clampwright/core').Plan;
    readonly valves: readonly import('@clampwright/record').IssuedValve[];
  };
  export default demo;
}
declare module 'virtual:demo-folder' {
  /** bytes in base64, by file name */
  const files: Readonly<Record<string, string>>;
  export default files;
}
