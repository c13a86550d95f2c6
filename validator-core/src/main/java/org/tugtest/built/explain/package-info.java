/** What, built otherwise than planned, would explain all readings of a loom. */
@NullMarked
package org.tugtest.built.explain;

import org.jspecify.annotations.NullMarked;
