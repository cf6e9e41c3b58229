/** The page's state in one place: whoever shows it subscribes, whoever changes it gives a patch. */
export interface Store<T> {
  get(): T;
  set(patch: Partial<T>): void;
  /** Calls `heard` after every change until the returned function is called. */
  subscribe(heard: () => void): () => void;
}

export function createStore<T extends object>(initial: T): Store<T> {
  let state = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    set(patch) {
      state = { ...state, ...patch };
      for (const heard of listeners) heard();
    },
    subscribe(heard) {
      listeners.add(heard);
      return () => listeners.delete(heard);
    },
  };
}
