// Makes the packed empty database that a first start unpacks. Needs the compiled store; part of `npm run build`.
import { makeTemplate } from '../dist/store/embedded/template.js';

await makeTemplate();
