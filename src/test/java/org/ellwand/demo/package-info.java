/**
 * The physical model behind the demo in {@code claims/} and {@code measurements/}: two invented products in two invented
 * ears. Nothing in it was measured.
 */
@NullMarked
package org.ellwand.demo;

import org.jspecify.annotations.NullMarked;
