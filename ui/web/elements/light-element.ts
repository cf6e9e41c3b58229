/**
 * Base of the page's elements. They draw into the page itself and not into shadow trees: one style sheet serves
 * all, labels and descriptions may point across elements, and charts can be found by tests and by readers alike.
 */
import { LitElement } from 'lit';

export abstract class LightElement extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }
}
