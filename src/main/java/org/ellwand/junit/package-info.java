/** Claims as tests of JUnit 5, for a maker's own test suite. */
@NullMarked
package org.ellwand.junit;

import org.jspecify.annotations.NullMarked;
