/** Work that several threads do at once. */
@NullMarked
package org.tugtest.threads;

import org.jspecify.annotations.NullMarked;
