/** The commands: read, call, write, exit code. */
@NullMarked
package org.ellwand.cli;

import org.jspecify.annotations.NullMarked;
