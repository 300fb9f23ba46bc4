/** Defines the controls that the panel takes from Fluent, so that none stays in memory once it has left the page. */
import "@fluentui/web-components/button/define.js";
import "@fluentui/web-components/text-input/define.js";

/** What FAST (3.0.3) keeps beside an element: its definition, and there whoever wants to know of changes. */
interface FastElement extends Element {
  readonly $fastController: {
    readonly definition: { $fastController?: Record<"subscribe" | "unsubscribe" | "notify", () => void> };
  };
}

const nothing = (): void => undefined;

/**
 * Every element subscribes to changes of its definition, in case its template comes later, and never unsubscribes: it would
 * be kept, and all that surrounds it and that its listeners hold. These come with their templates.
 */
function forgetElements(tag: string): void {
  const { definition } = (document.createElement(tag) as unknown as FastElement).$fastController;
  definition.$fastController = { subscribe: nothing, unsubscribe: nothing, notify: nothing };
}

for (const tag of ["fluent-button", "fluent-text-input"])
  void customElements.whenDefined(tag).then(() => forgetElements(tag));
