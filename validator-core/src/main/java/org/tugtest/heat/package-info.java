/** How warm conductors become, how long they take, and what current they may carry. */
@NullMarked
package org.tugtest.heat;

import org.jspecify.annotations.NullMarked;
