/** In which order: stars, circles, groups, several tools at once. */
export { groupOrder, type Point } from './group.ts';
export { circularOrder, isPermutation, oneByOne, paintedNumbers, synchronousStar, type TighteningList } from './ring.ts';
export { starOrder } from './star.ts';
