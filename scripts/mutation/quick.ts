import fc from 'fast-check';

// Which case broke a property does not matter here: no search for the smallest.
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
