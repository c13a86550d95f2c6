/** One lazy view of everything read and computed, for the rules to judge. */
@NullMarked
package org.tugtest.facts;

import org.jspecify.annotations.NullMarked;
