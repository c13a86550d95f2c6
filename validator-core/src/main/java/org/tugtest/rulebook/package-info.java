/** The page of a rule, made from what the rule says of itself, and what a format field means. */
@NullMarked
package org.tugtest.rulebook;

import org.jspecify.annotations.NullMarked;
