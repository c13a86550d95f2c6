/** What git knows of the harness files: the top of the work tree, the commit, what differs. */
@NullMarked
package org.tugtest.git;

import org.jspecify.annotations.NullMarked;
