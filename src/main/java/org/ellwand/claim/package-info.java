/** Products, editions, claims and rules, and the reader of claims files. */
@NullMarked
package org.ellwand.claim;

import org.jspecify.annotations.NullMarked;
