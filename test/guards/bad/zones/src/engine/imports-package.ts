export { z } from 'zod';
