/**
 * From texts to a {@link org.tugtest.model.Harness}, with the places of everything read and all
 * problems at once.
 */
@NullMarked
package org.tugtest.read;

import org.jspecify.annotations.NullMarked;
