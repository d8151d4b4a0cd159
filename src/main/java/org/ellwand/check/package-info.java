/** Findings about the data itself. */
@NullMarked
package org.ellwand.check;

import org.jspecify.annotations.NullMarked;
