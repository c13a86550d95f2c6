/** Whether two revisions are electrically the same, and the proof. */
@NullMarked
package org.tugtest.compare.circuit;

import org.jspecify.annotations.NullMarked;
