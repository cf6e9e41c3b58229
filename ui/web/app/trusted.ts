/**
 * The two doors through which text of the page's own making becomes markup or the address of code. The page's policy
 * (scripts/policy.mjs) shuts every other: browsers that know Trusted Types refuse plain text there.
 */
interface Policy {
  createHTML(text: string): string;
  createScriptURL(address: string): string;
}

const { trustedTypes } = globalThis as {
  trustedTypes?: { createPolicy(name: string, policy: Policy): Policy };
};
const unchanged = (text: string) => text;
const own: Policy = { createHTML: unchanged, createScriptURL: unchanged };
const policy = trustedTypes?.createPolicy('tankful', own) ?? own;

/** A drawing as ui/web/charts makes it, in which names are escaped. */
export const asMarkup = (drawing: string): string => policy.createHTML(drawing);

/** Address of a file that came with the page. */
export const asCode = (address: URL): string => policy.createScriptURL(String(address));
