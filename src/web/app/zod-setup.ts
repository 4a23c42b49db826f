// zod builds validators as code where it may; the page's security policy forbids generated code, so it must not try.
import { z } from 'zod';

z.config({ jitless: true });
