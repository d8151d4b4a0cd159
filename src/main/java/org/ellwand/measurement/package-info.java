/** Sessions, readings, stimuli and causes of uncertainty, and the readers of session files and data sheets. */
@NullMarked
package org.ellwand.measurement;

import org.jspecify.annotations.NullMarked;
