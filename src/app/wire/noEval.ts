import { config } from 'zod';

// The content policy forbids code from text; the schema library must not even try. Imported before any schema is made.
config({ jitless: true });
