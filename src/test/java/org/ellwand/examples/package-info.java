/**
 * The physical models behind {@code measurements/examples/}: small, invented, one for each group of example claims. Nothing
 * in it was measured.
 */
@NullMarked
package org.ellwand.examples;

import org.jspecify.annotations.NullMarked;
