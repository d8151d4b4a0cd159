/** What is said of a result: keys with their figures, and the sentences that they are worded in. */
@NullMarked
package org.ellwand.words;

import org.jspecify.annotations.NullMarked;
