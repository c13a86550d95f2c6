/** What a team expects to stay true, and what came of judging it. */
@NullMarked
package org.tugtest.expect;

import org.jspecify.annotations.NullMarked;
