/** Which contacts there are, what ends on them, what mates, and what is joined. */
@NullMarked
package org.tugtest.network;

import org.jspecify.annotations.NullMarked;
