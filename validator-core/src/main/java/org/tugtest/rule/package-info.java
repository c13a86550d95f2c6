/** What the author of a rule sees. */
@NullMarked
package org.tugtest.rule;

import org.jspecify.annotations.NullMarked;
