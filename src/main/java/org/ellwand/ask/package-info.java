/** The letter of questions to the maker. */
@NullMarked
package org.ellwand.ask;

import org.jspecify.annotations.NullMarked;
