export { Command } from 'commander';
