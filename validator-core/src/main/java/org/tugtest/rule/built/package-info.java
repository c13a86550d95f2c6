/** Rules of what was built and measured, against the plan. */
@NullMarked
package org.tugtest.rule.built;

import org.jspecify.annotations.NullMarked;
