/** What flows and what is live in each operating state. */
@NullMarked
package org.tugtest.operate;

import org.jspecify.annotations.NullMarked;
