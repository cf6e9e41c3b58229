/** Opens a fold at the moment something becomes so; shutting it again is left to its reader, whose hand may be in it. */
import { noChange } from 'lit';
import { Directive, directive, type ElementPart } from 'lit/directive.js';

class OpensWhen extends Directive {
  private last = false;

  override render(_so: boolean): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [so]: [boolean]): typeof noChange {
    if (so && !this.last) (element as HTMLDetailsElement).open = true;
    this.last = so;
    return noChange;
  }
}

export const opensWhen = directive(OpensWhen);
