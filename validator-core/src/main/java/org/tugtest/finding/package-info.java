/** What a rule found: its level, subjects, figure against limit, basis, remedy and places. */
@NullMarked
package org.tugtest.finding;

import org.jspecify.annotations.NullMarked;
