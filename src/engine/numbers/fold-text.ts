// One plain form for what people type, before anything is read from it.

/** Printable ASCII with single spaces inside. */
const PLAIN = /^[!-~]+(?: [!-~]+)*$/;

/**
 * The text in lower case with single plain spaces, plain hyphen-minus, apostrophe and slash, and without compatibility
 * characters: "1½" becomes "1 1/2", "cm²" becomes "cm2", "４７" becomes "47". Folding twice changes nothing more.
 */
export function foldText(text: string): string {
  // Most texts are plain already, and boards fold thousands of them.
  if (PLAIN.test(text)) return text.toLowerCase();
  return (
    text
      // A fraction sign must not run into the whole number before it: 1½ is not 11/2.
      .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/g, ' $&')
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[\u2212\u2010\u2011\u2013]/g, '-')
      .replace(/\u2044/g, '/')
      .replace(/[\u2018\u2019]/g, "'")
      .replace(/\s+/g, ' ')
      .trim()
  );
}
