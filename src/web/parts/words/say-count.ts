export { sayCount } from "#base";
