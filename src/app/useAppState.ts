/** Screens read the store through this: `const project = useAppState(app.store, (s) => s.document.project)`. */
export { useStore as useAppState } from 'zustand';
