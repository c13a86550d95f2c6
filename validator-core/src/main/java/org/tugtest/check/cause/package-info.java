/** What follows from what: findings that are there since another is. */
@NullMarked
package org.tugtest.check.cause;

import org.jspecify.annotations.NullMarked;
