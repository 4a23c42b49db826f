// The pages of the day's boards.
import { FILE_PATHS } from '#api/endpoints.js';
import type { PrintOrder } from '#api/print.js';
import { call } from '../../app/client.js';
import { PaperPreview } from '../../parts/paper-preview.js';

export function PagePreview({ order }: { readonly order: PrintOrder }) {
  return (
    <PaperPreview
      orderKey={[order]}
      load={() => call('previewPrint', {}, order)}
      path={FILE_PATHS.print}
      order={order}
      paper={order.paper}
      fileName={`afterbell-${order.document}.pdf`}
    />
  );
}
