/** What is still to be measured, how often, and what it costs the ear. */
@NullMarked
package org.ellwand.plan;

import org.jspecify.annotations.NullMarked;
