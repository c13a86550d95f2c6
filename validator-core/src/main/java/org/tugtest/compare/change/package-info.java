/** What was changed, in the words of the trade. */
@NullMarked
package org.tugtest.compare.change;

import org.jspecify.annotations.NullMarked;
