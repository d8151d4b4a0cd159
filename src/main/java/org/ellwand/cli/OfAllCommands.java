package org.ellwand.cli;

/** A command that tells of all the others, and needs them there. */
interface OfAllCommands {}
