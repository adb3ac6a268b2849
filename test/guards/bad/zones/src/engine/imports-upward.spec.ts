export { page } from '../playbook/index.ts';
