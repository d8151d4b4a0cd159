/** Inner loops by the clock, each beside what one would do instead: {@code mvn -P benches test-compile}. */
package org.ellwand.benches;
