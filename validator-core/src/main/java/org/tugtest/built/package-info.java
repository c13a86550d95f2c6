/**
 * The loom as it was built against its plan: what is told of it, what explains it, what follows.
 */
@NullMarked
package org.tugtest.built;

import org.jspecify.annotations.NullMarked;
