declare module 'virtual:practice-plan' {
  const plan: import('@clampwright/core').Plan;
  export default plan;
}
