/** What flows and what arrives: one class per rule. */
@NullMarked
package org.tugtest.rule.load;

import org.jspecify.annotations.NullMarked;
