/** Two audits side by side: verdicts that changed, and shifts with the uncertainty of the difference. */
@NullMarked
package org.ellwand.compare;

import org.jspecify.annotations.NullMarked;
