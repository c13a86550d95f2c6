/** Rules on feed, fuses and isolation. */
@NullMarked
package org.tugtest.rule.protection;

import org.jspecify.annotations.NullMarked;
