/** Text that people wrote, read with its places: YAML trees with line and column, problems, suggestions. */
@NullMarked
package org.ellwand.input;

import org.jspecify.annotations.NullMarked;
