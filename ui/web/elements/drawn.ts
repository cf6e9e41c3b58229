/** Puts a drawing, which is text, into the element it stands in: anew when it is another one. */
import { noChange } from 'lit';
import { Directive, directive, type ElementPart } from 'lit/directive.js';
import { asMarkup } from '../app/trusted.ts';

class Drawn extends Directive {
  private last = '';

  override render(_drawing: string): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [drawing]: [string]): typeof noChange {
    if (drawing !== this.last) element.innerHTML = asMarkup(drawing);
    this.last = drawing;
    return noChange;
  }
}

export const drawn = directive(Drawn);
